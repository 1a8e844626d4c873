using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Line;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>
/// Lines with so many jobs in them, no more and no less: each that is done goes back to the start. The penny fabs of Hopp and Spearman,
/// Factory Physics (laws found in print, figures recomputed).
/// </summary>
public sealed class ClosedLineTests
{
    /// <summary>Of so many that are done one leaves; the others go round.</summary>
    private const int Rounds = 2_000;

    /// <summary>Penny Fab One: four machines of 2 h. Best case: min(w / 8, 0.5) an hour.</summary>
    [Theory]
    [InlineData(1, 0.125)]
    [InlineData(2, 0.25)]
    [InlineData(3, 0.375)]
    [InlineData(4, 0.5)]
    [InlineData(7, 0.5)]
    [InlineData(10, 0.5)]
    public void Times_of_one_length_make_the_best_case(int jobs, double perHour)
        => Assert.Equal(perHour, Rate(PennyFabOne(jobs, TestLines.Minutes(120)), 0), perHour * 0.01);

    /// <summary>The same with random times of that mean is the practical worst case: 0.5 w / (w + 3).</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(7)]
    [InlineData(10)]
    public void Random_times_make_the_practical_worst_case(int jobs)
    {
        var line = PennyFabOne(jobs, TaskTime.RandomSeconds(7_200));
        var mean = Interval.Of20(seed => Rate(line, seed));
        Assert.True(mean.AlmostHolds(0.5 * jobs / (jobs + 3)), $"{mean} for {0.5 * jobs / (jobs + 3)}");
        Assert.InRange(mean.Half, 0, 0.02);
    }

    /// <summary>
    /// Penny Fab Two: 1 machine of 2 h, 2 of 5 h, 6 of 10 h, 2 of 3 h. The two make 0.4 an hour and hold the line up; a job alone takes
    /// 20 h; 8 jobs are what keeps it busy.
    /// </summary>
    [Fact]
    public void Machines_beside_each_other()
    {
        LineStep[] steps = [Machines(1, 2), Machines(2, 5), Machines(6, 10), Machines(2, 3)];
        var open = LineRun.Of(TestLines.Of(new LineSupply(2_000, TaskTime.None), steps));
        Assert.Equal(20, Ticks.Hours(open.Outs[0]), 9);
        Assert.Equal(0.4, open.SteadyRate, 3);
        Assert.Equal(4 / 20.0, Rate(Closed(4, steps), 0), 0.002);
        Assert.Equal(0.4, Rate(Closed(8, steps), 0), 0.004);
        Assert.Equal(0.4, Rate(Closed(12, steps), 0), 0.004);
    }

    private static LineStep Machines(int places, double hours) => TestLines.Server(places, TaskTime.OfSeconds(3600 * hours));

    private static ProductLine PennyFabOne(int jobs, TaskTime time)
        => Closed(jobs, [.. Enumerable.Range(0, 4).Select(_ => TestLines.Server(1, time))]);

    /// <summary>The first job that is done leaves, so one more comes in; the next leaves after as many rounds.</summary>
    private static ProductLine Closed(int jobs, LineStep[] steps)
    {
        var last = steps[^1] with { SentBack = 1 - (1.0 / Rounds) };
        var line = TestLines.Of(new LineSupply(jobs + 1, TaskTime.None), [.. steps[..^1], last]);
        return line with { Moves = [.. line.Moves, new LineMove(steps.Length, 1) { IsBack = true }] };
    }

    private static double Rate(ProductLine line, int seed)
    {
        var run = LineRun.Of(line, seed);
        return Rounds / Ticks.Hours(run.Outs[1] - run.Outs[0]);
    }
}
