using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>Pieces that are sent back to an earlier station, and pass again what lies between.</summary>
public sealed class SentBackTests
{
    /// <summary>
    /// Wash 10 s, bench 10 s, every second one goes back: the first is out at 20 s, the second is done at 30 s, goes back, and is out at
    /// 50 s. Worked out by hand.
    /// </summary>
    [Fact]
    public void Every_second_one_goes_back()
    {
        var run = LineRun.Of(WashAndBench(items: 2, share: 0.5));
        Assert.Equal([20, 50], run.Outs.Select(Ticks.Seconds));
        Assert.Equal([2, 3, 3], run.Steps.Select(s => s.Items));
    }

    /// <summary>
    /// A station whose pieces come back with a share r sees 1 / (1 - r) times what leaves, so it makes (1 - r) / t (Hopp and Spearman,
    /// Factory Physics, on rework; from memory).
    /// </summary>
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.2)]
    [InlineData(0.5)]
    public void The_rate_falls_by_the_share(double share)
    {
        var run = LineRun.Of(WashAndBench(items: 4_000, share));
        Assert.Null(run.Locked);
        Assert.Equal(4_000, run.Outs.Count);
        Assert.InRange(run.Steps[2].Items, (4_000 / (1 - share)) - 2, (4_000 / (1 - share)) + 2);
        Assert.Equal(360 * (1 - share), run.SteadyRate, 1.0);
    }

    /// <summary>What is sent back joins the others in their batches, and the last of them do not wait for ever.</summary>
    [Fact]
    public void Batches_take_what_comes_back_with_the_others()
    {
        var line = WashAndBench(items: 40, share: 0.1);
        var run = LineRun.Of(line with
        {
            Steps = [line.Steps[0], line.Steps[1] with { Batch = 8, Least = 8, Waits = 8 }, line.Steps[2] with { Waits = 8 }],
        });
        Assert.Equal(40, run.Outs.Count);
        Assert.Equal(44, run.Steps[2].Items);
    }

    /// <summary>400 birds: every tenth that passes the bench goes back to the cones, so 444 pass it.</summary>
    [Fact]
    public void A_plan_says_where_they_go_back_to()
    {
        var plan = CheckedPlan.Plan(Text("rework 10 % at cones"));
        var day = CheckedPlan.Facts(plan).Day;
        Assert.Empty(day.Planned.Needs);
        Assert.Equal(400, day.Paced!.Outs.Count);
        Assert.All(
            day.Paced.Steps.Where(s => s.Name is "cones" or "scald" or "pluck" or "bench"), s => Assert.Equal(444, s.Items));
        Assert.Equal(444 * (4 + 12), Ticks.Seconds(day.Paced.People.Sum(p => p.Working)));

        // They are carried over the real way: about 4.5 m from the bench to the cones, as the places say.
        var back = day.Planned.Line!.Moves.Single(m => m.IsBack);
        Assert.Equal(44, day.Paced.Moves[^1].Trips);
        Assert.InRange(back.Metres, 4, 6);
        Assert.True(day.Rate < CheckedPlan.Facts(CheckedPlan.Plan(Text(""))).Day.Rate);
        Assert.Contains(CrewWork.Of(day).Single().Tasks, t => t.Name == "carry from bench to cones");
    }

    [Theory]
    [InlineData("rework 10 % at rack", "bench sends pieces back to rack, which the product does not pass before it")]
    [InlineData("rework 10 % at bench", "bench sends pieces back to bench, which the product does not pass before it")]
    [InlineData("rework 95 % at cones", "so much rework at bench that hardly anything leaves")]
    public void What_cannot_be_is_told(string rework, string missing)
    {
        string text = Text(rework).Replace("store rack", "station rack", StringComparison.Ordinal)
            .Replace("holds 10 shelves x 32 birds", "holds 10 shelves x 32 birds\n  stays 2 min", StringComparison.Ordinal);
        var need = Assert.Single(CheckedPlan.Facts(CheckedPlan.Plan(text)).Day.Planned.Needs);
        Assert.Equal(("bench", missing), (need.Of, need.Missing));
        Assert.Contains("rework", need.Write, StringComparison.Ordinal);
    }

    [Fact]
    public void A_station_that_there_is_none_of_is_a_mistake()
    {
        var found = CheckedPlan.Bind(Text("rework 10 % at cone")).Diagnostics;
        Assert.Contains(found, d => d.Span.Value == "cone" && d.Message.Contains("cone", StringComparison.Ordinal));
    }

    private static string Text(string rework)
        => new DayLine { Bench = $"work 12 s each\n  waits 16 birds\n  {rework}" }.Text;

    private static ProductLine WashAndBench(int items, double share)
    {
        var line = TestLines.Of(
            new LineSupply(items, TaskTime.None), new LineStep { Name = "wash", Stay = TaskTime.OfSeconds(10) },
            new LineStep { Name = "bench", Stay = TaskTime.OfSeconds(10), SentBack = share });
        return line with { Moves = [.. line.Moves, new LineMove(2, 1) { IsBack = true }] };
    }
}
