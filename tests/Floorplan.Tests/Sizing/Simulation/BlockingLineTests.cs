using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Line;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>Stations in a row with little room between them: what is done waits in its place and blocks it.</summary>
public sealed class BlockingLineTests
{
    /// <summary>
    /// Rate of a line that never lacks items, random times of mean 1, by stations and room between: Hunt 1956, Hillier and Boling (from
    /// memory, confirmed by exact chains).
    /// </summary>
    [Theory]
    [InlineData(2, 0, 2 / 3.0)]
    [InlineData(2, 1, 3 / 4.0)]
    [InlineData(2, 2, 4 / 5.0)]
    [InlineData(2, 4, 6 / 7.0)]
    [InlineData(3, 0, 22 / 39.0)]
    [InlineData(3, 1, 0.6705)]
    [InlineData(3, 2, 0.7340)]
    [InlineData(3, 4, 0.8075)]
    [InlineData(4, 0, 0.5148)]
    [InlineData(4, 3, 0.7477)]
    [InlineData(5, 0, 0.4858)]
    [InlineData(6, 0, 0.4667)]
    public void Equal_stations(int stations, int room, double rate)
        => Near(rate, [.. Enumerable.Range(0, stations).Select(i => (1.0, i == 0 ? 0 : room))]);

    /// <summary>Unequal room and a slow middle station: by reversibility, and exact chains.</summary>
    [Theory]
    [InlineData(1, 0, 1, 46 / 75.0)]
    [InlineData(0, 1, 1, 46 / 75.0)]
    [InlineData(0, 0, 2, 0.3940)]
    [InlineData(1, 1, 2, 0.4481)]
    public void Unequal_stations(int first, int second, double middle, double rate) => Near(rate, [(1, 0), (middle, first), (1, second)]);

    /// <summary>
    /// Sixteen at once, eight of them a minute in the tank, then half a minute each: worked out by hand. Times, their mean, and items
    /// inside on average.
    /// </summary>
    [Fact]
    public void A_batch_and_a_server()
    {
        var outcome = LineRun.Of(TestLines.Of(
            new LineSupply(16, TaskTime.None),
            new LineStep { Name = "tank", Batch = 8, Least = 8, Stay = TestLines.Minutes(1) },
            TestLines.Server(1, TestLines.Minutes(0.5))));
        Assert.Equal([.. Enumerable.Range(0, 16).Select(i => TestLines.Minutes(1.5 + (0.5 * i)).Mean)], outcome.Outs);
        Assert.Equal(5.25, outcome.Outs.Average() / Ticks.Minute, 9);
        Assert.Equal(16 * 5.25 / 9, outcome.InsideTime / outcome.End, 9);
    }

    /// <summary>
    /// Cones for eight and three minutes, a tank for eight and two, a plucker for four and one, two people at a minute each: the first is
    /// out after 7 min, all n after 6 + n / 2. Worked out by hand.
    /// </summary>
    [Theory]
    [InlineData(16)]
    [InlineData(48)]
    [InlineData(96)]
    public void A_line_of_batches(int items)
    {
        var outcome = LineRun.Of(TestLines.Of(
            new LineSupply(items, TaskTime.None),
            Batches("cones", 8, 3), Batches("tank", 8, 2), Batches("plucker", 4, 1), TestLines.Server(2, TestLines.Minutes(1), waits: 8)));
        Assert.Equal(TestLines.Minutes(7).Mean, outcome.Outs[0]);
        Assert.Equal(TestLines.Minutes(6 + (items / 2.0)).Mean, outcome.End);
    }

    /// <summary>Places by Little's law: two a minute that stay two hours need 240 places, and fewer hold the line up.</summary>
    [Theory]
    [InlineData(240, 120)]
    [InlineData(120, 60)]
    [InlineData(480, 120)]
    public void A_tank_has_places_for_rate_times_stay(int places, double rate)
    {
        var outcome = LineRun.Of(TestLines.Of(
            new LineSupply(2_400, TestLines.Minutes(0.5)), TestLines.Server(places, TestLines.Minutes(120))));
        Assert.Equal(rate, outcome.SteadyRate, rate * 0.08);
        Assert.Equal(places == 480 ? 240 : places, outcome.Steps[1].MostHere - outcome.Steps[1].MostWaiting, 1.0);
    }

    /// <summary>
    /// Hands that share all work make n over the work of an item: 4 people and 6 minutes give 40 an hour (Hopp and Spearman).
    /// </summary>
    [Theory]
    [InlineData(1, 10)]
    [InlineData(4, 40)]
    [InlineData(6, 60)]
    public void People_who_share_all_work(int people, double rate)
    {
        LineStep Work(double minutes) =>
            new() { Name = "bench", Places = 10, Hands = 10, Waits = 20, Crew = 0, Work = TestLines.Minutes(minutes) };
        var outcome = LineRun.Of(
            TestLines.Of(new LineSupply(3_000, TaskTime.None), Work(1), Work(3), Work(2)) with { Crews = [new("all", people)] });
        Assert.Equal(rate, outcome.SteadyRate, rate * 0.02);
        Assert.All(outcome.People, p => Assert.InRange(p.Working / (double)outcome.End, 0.95, 1));
    }

    private static LineStep Batches(string name, int items, double minutes) =>
        new() { Name = name, Batch = items, Least = items, Stay = TestLines.Minutes(minutes) };

    private static void Near(double rate, (double Mean, int Room)[] stations)
    {
        var line = TestLines.Of(
            new LineSupply(10_000, TaskTime.None),
            [.. stations.Select(s => TestLines.Server(1, TaskTime.RandomSeconds(s.Mean), s.Room))]);
        var mean = Interval.Of20(seed => LineRun.Of(line, seed).SteadyRate / 3600);
        Assert.InRange(mean.Mean, rate - (2 * mean.Half) - 0.00005, rate + (2 * mean.Half) + 0.00005);
        Assert.InRange(mean.Half, 0, 0.01 * rate);
    }
}
