using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>What must hold of every line, on 300 invented ones.</summary>
public sealed class LinePropertyTests
{
    [Fact]
    public void Twice_the_speed_of_everything_takes_half_the_time() => Assert.All(Enumerable.Range(0, 300), seed =>
    {
        var line = Invented(seed);
        var fast = line with
        {
            Steps = [.. line.Steps.Select(s => s with { Work = s.Work.Times(0.5), Stay = s.Stay.Times(0.5) })],
            Moves = [.. line.Moves.Select(m => m with { There = m.There / 2, Back = m.Back / 2 })],
            Supply = line.Supply with { Every = line.Supply.Every.Times(0.5) },
        };
        Assert.Equal(LineRun.Of(line).End, 2 * LineRun.Of(fast).End);
    });

    [Fact]
    public void The_same_line_gives_the_same_run() => Assert.All(Enumerable.Range(0, 50), seed =>
    {
        var line = Spread(Invented(seed));
        Assert.Equal(LineRun.Of(line, 3).Outs, LineRun.Of(line, 3).Outs);
        Assert.NotEqual(LineRun.Of(line, 3).Outs, LineRun.Of(line, 4).Outs);
    });

    /// <summary>
    /// Hands that choose what is near may be drawn to the wrong place by one more place, so a rate may fall a little: never by a fifth.
    /// Without hands more places never lower it.
    /// </summary>
    [Fact]
    public void A_place_more_never_lowers_the_rate_of_a_line_without_hands() => Assert.All(Enumerable.Range(0, 300), seed =>
    {
        var line = PlannedDay.Fast(WithoutHands(Invented(seed)));
        long end = LineRun.Of(line).End;
        Assert.All(
            DayChange.All(line).Where(c => c.Text.Contains("holds", StringComparison.Ordinal)),
            c => Assert.InRange(LineRun.Of(c.Make(line)).End, 0, end));
    });

    [Fact]
    public void A_person_more_hardly_ever_makes_the_day_longer() => Assert.All(Enumerable.Range(0, 300), seed =>
    {
        var line = PlannedDay.Fast(Invented(seed));
        long end = LineRun.Of(line).End;
        Assert.All(
            DayChange.All(line).Where(c => c.Text.Contains("person", StringComparison.Ordinal)),
            c => Assert.InRange(LineRun.Of(c.Make(line)).End, 0, (long)(1.2 * end)));
    });

    [Fact]
    public void Nothing_is_done_in_less_time_than_its_way_takes() => Assert.All(Enumerable.Range(0, 300), seed =>
    {
        var line = Invented(seed);
        long least = line.Steps.Sum(s => s.Work.Mean + s.Stay.Mean) + line.Moves.Sum(m => m.There);
        Assert.InRange(LineRun.Of(line).Outs[0], least, long.MaxValue);
    });

    private static ProductLine WithoutHands(ProductLine line) => line with
    {
        Steps = [.. line.Steps.Select(s => s with { Crew = -1, Stay = new(s.Stay.Mean + s.Work.Mean), Work = TaskTime.None })],
        Moves = [.. line.Moves.Select(m => m with { Crew = -1, Load = 1 })],
    };

    private static ProductLine Spread(ProductLine line) => line with
    {
        Steps = [.. line.Steps.Select(s => s with { Work = s.Work.Mean > 0 ? new(s.Work.Mean, TimeShape.Hand, 0.3) : s.Work })],
    };

    private static ProductLine Invented(int seed)
    {
        var random = new Random(seed);
        int count = random.Next(2, 7);
        int crews = random.Next(1, 3);
        var steps = Enumerable.Range(0, count).Select(i =>
        {
            int batch = random.Next(3) == 0 ? random.Next(2, 6) : 1;
            return new LineStep
            {
                Name = $"s{i}",
                Places = random.Next(1, 5),
                Batch = batch,
                Least = batch,
                Work = new TaskTime(2 * Ticks.Second * random.Next(1, 40)),
                Stay = new TaskTime(2 * Ticks.Second * (random.Next(2) == 0 ? 0 : random.Next(1, 90))),
                Waits = random.Next(0, 6) + batch,
                Hands = random.Next(1, 3),
                Crew = random.Next(crews),
            };
        }).ToArray();
        return new ProductLine
        {
            Steps = [TestLines.Source, .. steps],
            Moves =
            [
                .. steps.Select((s, i) => new LineMove(i, i + 1)
                {
                    Crew = random.Next(crews), There = 2 * Ticks.Second * random.Next(0, 8), Back = 2 * Ticks.Second, Load = 1,
                }),
            ],
            Crews = [.. Enumerable.Range(0, crews).Select(c => new LineCrew($"c{c}", random.Next(1, 4)))],
            Supply = new LineSupply(60, new TaskTime(2 * Ticks.Second * random.Next(0, 60))),
        };
    }
}
