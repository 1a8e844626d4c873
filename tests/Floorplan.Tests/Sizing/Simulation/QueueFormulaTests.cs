using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Line;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>The simulation against queues that have exact answers; their sources stand beside each.</summary>
public sealed class QueueFormulaTests
{
    private const int Items = 10_000;

    /// <summary>
    /// Customers in the system. M/M/1 and M/M/2 with 2 an hour in and 3 served: Hillier and Lieberman's hospital (from memory, recomputed);
    /// M/M/3: the same formula; 24 and 30 an hour, and 300 and 182.5 a year: Bronson 1982, problems 23.3 and 24.6.
    /// </summary>
    [Theory]
    [InlineData(2, 3, 1, 2)]
    [InlineData(2, 3, 2, 0.75)]
    [InlineData(2, 1, 3, 26 / 9.0)]
    [InlineData(1.6, 1, 2, 40 / 9.0)]
    [InlineData(24, 30, 1, 4)]
    [InlineData(300, 182.5, 3, 1.996262)]
    public void Random_arrivals_and_services(double arrive, double serve, int servers, double inside)
    {
        var line = TestLines.Of(
            new LineSupply(Items, TaskTime.RandomSeconds(3600 / arrive)), TestLines.Server(servers, TaskTime.RandomSeconds(3600 / serve)));
        var mean = Interval.Of20(seed => Inside(LineRun.Of(line, seed)));
        Assert.True(mean.AlmostHolds(inside), $"{mean} for {inside}");
        Assert.InRange(mean.Half, 0, 0.15 * inside);
    }

    /// <summary>The same queues: how many wait, and how long one is there, in hours.</summary>
    [Theory]
    [InlineData(2, 3, 1, 4 / 3.0, 1)]
    [InlineData(2, 3, 2, 1 / 12.0, 3 / 8.0)]
    [InlineData(2, 1, 3, 8 / 9.0, 13 / 9.0)]
    [InlineData(1.6, 1, 2, 128 / 45.0, 25 / 9.0)]
    [InlineData(300, 182.5, 3, 0.352426, 1.996262 / 300)]
    public void Random_arrivals_wait(double arrive, double serve, int servers, double waiting, double hours)
    {
        var line = TestLines.Of(
            new LineSupply(Items, TaskTime.RandomSeconds(3600 / arrive)),
            TestLines.Server(servers, TaskTime.RandomSeconds(3600 / serve)));
        var mean = Interval.Of20(seed => Waiting(LineRun.Of(line, seed)));
        Assert.True(mean.AlmostHolds(waiting), $"{mean} for {waiting}");
        var time = Interval.Of20(seed => Ticks.Hours((long)LineRun.Of(line, seed).TimeOnLine));
        Assert.True(time.AlmostHolds(hours), $"{time} for {hours}");
    }

    /// <summary>Waiting with services of one length: Pollaczek and Khinchine, Lq = ρ² / 2 (1 - ρ).</summary>
    [Theory]
    [InlineData(0.5, 0.25)]
    [InlineData(0.8, 1.6)]
    [InlineData(0.9, 4.05)]
    public void Services_of_one_length(double load, double waiting)
    {
        var line = TestLines.Of(
            new LineSupply(Items, TaskTime.RandomSeconds(60 / load)), TestLines.Server(1, TaskTime.OfSeconds(60)));
        var mean = Interval.Of20(seed => Waiting(LineRun.Of(line, seed)));
        Assert.True(mean.AlmostHolds(waiting), $"{mean} for {waiting}");
    }

    /// <summary>Pollaczek and Khinchine for services that spread by half their mean: Lq = ρ² (1 + 0.25) / 2 (1 - ρ).</summary>
    [Fact]
    public void Services_that_spread()
    {
        var line = TestLines.Of(
            new LineSupply(Items, TaskTime.RandomSeconds(60 / 0.8)), TestLines.Server(1, TaskTime.HandSeconds(60, 0.5)));
        var mean = Interval.Of20(seed => Waiting(LineRun.Of(line, seed)));
        Assert.True(mean.AlmostHolds(0.64 * 1.25 / 0.4), $"{mean}");
    }

    /// <summary>
    /// One server that waits for a full batch: L = (K - 1) / 2 + r / (1 - r), with r the root in (0, 1) of μ r^(K+1) - (λ + μ) r + λ = 0
    /// (Gross and Harris, from memory; checked against a chain of 600 states).
    /// </summary>
    [Theory]
    [InlineData(20, 12, 2, 8.153312)]
    [InlineData(6, 1, 8, 18.0424)]
    public void Services_in_full_batches(double arrive, double serve, int batch, double inside)
    {
        var line = TestLines.Of(
            new LineSupply(Items, TaskTime.RandomSeconds(3600 / arrive)),
            TestLines.Server(1, TaskTime.RandomSeconds(3600 / serve)) with { Batch = batch, Least = batch });
        var mean = Interval.Of20(seed => Inside(LineRun.Of(line, seed)));
        Assert.True(mean.AlmostHolds(inside), $"{mean} for {inside}");
    }

    /// <summary>A band of 95 % misses about one time in twenty: of 100, 1 to 13 (outside of it 0.7 % of the binomial).</summary>
    [Fact]
    public void Bands_hold_as_often_as_they_say()
    {
        var line = TestLines.Of(new LineSupply(500, TaskTime.RandomSeconds(60 / 0.5)), TestLines.Server(1, TaskTime.RandomSeconds(60)));

        // A run begins empty, so its mean is a little low; the band is about the mean of such runs.
        double expected = Enumerable.Range(100_000, 4_000).AsParallel().Average(seed => Waiting(LineRun.Of(line, seed)));
        int missed = Enumerable.Range(0, 100).Count(
            i => !Interval.Of20(seed => Waiting(LineRun.Of(line, seed)), 1 + (20 * i)).Holds(expected));
        Assert.InRange(missed, 1, 13);
    }

    /// <summary>
    /// One operator starts machines that then run alone: machines running, by N and by starting over running time, M/M/1//N exact.
    /// </summary>
    [Theory]
    [InlineData(2, 0.1, 1.803)]
    [InlineData(4, 0.1, 3.533)]
    [InlineData(6, 0.1, 5.155)]
    [InlineData(2, 0.2, 1.622)]
    [InlineData(4, 0.2, 3.008)]
    [InlineData(3, 0.5, 1.579)]
    [InlineData(6, 0.5, 1.976)]
    public void One_operator_for_several_machines(int machines, double starting, double running)
    {
        var machine = new LineStep
        {
            Name = "machines",
            Places = machines,
            Crew = 0,
            Work = TaskTime.RandomSeconds(60 * starting),
            Stay = TaskTime.RandomSeconds(60),
        };
        var line = TestLines.Of(new LineSupply(Items, TaskTime.None), machine) with { Crews = [new("operator", 1)] };
        var mean = Interval.Of20(seed =>
        {
            var outcome = LineRun.Of(line, seed);
            return (outcome.Steps[1].GoingTime - outcome.Steps[1].HandsTime) / outcome.End;
        });

        // The table has three places.
        Assert.InRange(mean.Mean, running - (2 * mean.Half) - 0.0015, running + (2 * mean.Half) + 0.0015);
    }

    private static double Inside(LineOutcome outcome) => outcome.InsideTime / outcome.End;

    private static double Waiting(LineOutcome outcome) => (outcome.Steps[0].WaitingTime + outcome.Steps[1].WaitingTime) / outcome.End;
}
