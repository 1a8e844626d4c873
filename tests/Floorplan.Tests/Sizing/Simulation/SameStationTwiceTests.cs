using System.Text.RegularExpressions;
using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>A station that the product comes to again; lines small enough to work out by hand, and plans.</summary>
public sealed class SameStationTwiceTests
{
    /// <summary>
    /// Two items, one person: bench 10 s, machine 20 s, bench again 10 s. While the first is in the machine the second is begun, and has
    /// to wait for the machine; the first waits beside the bench, so both go on at 30 s.
    /// </summary>
    [Fact]
    public void One_bench_serves_both_times()
    {
        var run = LineRun.Of(BenchAndMachine(items: 2, waits: 1));
        Assert.Null(run.Locked);
        Assert.Equal([40, 60], run.Outs.Select(Ticks.Seconds));
        Assert.Equal(["outside", "bench", "machine", "bench, time 2"], run.Steps.Select(s => s.Name));
        Assert.Equal(40, Ticks.Seconds(run.People.Single().Working));
    }

    /// <summary>Nobody can be at both times at once: the bench works 20 s on each item, so no rate is above 180 an hour.</summary>
    [Fact]
    public void The_place_is_shared()
    {
        var run = LineRun.Of(BenchAndMachine(items: 400, waits: 3) with { Crews = [new("hands", 4)] });
        Assert.InRange(run.SteadyRate, 150, 180.01);
    }

    /// <summary>Without room beside the bench each waits for the other: the machine for the bench, the bench for the machine.</summary>
    [Fact]
    public void A_line_that_locks_itself_says_so()
    {
        var run = LineRun.Of(BenchAndMachine(items: 3, waits: 0));
        Assert.Equal([1, 2, 3], run.Locked!.Steps.Order());
        Assert.Equal(3, run.Locked.Wait);
        Assert.Equal(30, Ticks.Seconds(run.Locked.At));
        Assert.Equal(0, run.SteadyRate);

        // What it asks for is enough.
        Assert.Null(LineRun.Of(BenchAndMachine(items: 3, waits: run.Locked.Items)).Locked);
    }

    /// <summary>Rests that come back for ever do not keep it going, nor do they hide it.</summary>
    [Fact]
    public void A_line_that_rests_and_locks_itself_ends()
    {
        var line = BenchAndMachine(items: 3, waits: 0) with { RestShare = 0.1, RestEvery = Ticks.Minute };
        Assert.NotNull(LineRun.Of(line).Locked);
        Assert.Equal(2, LineRun.Of(line with { Supply = line.Supply with { Items = 2 }, Steps = BenchAndMachine(2, 2).Steps }).Outs.Count);
    }

    /// <summary>400 birds of 12 s, each at the bench twice.</summary>
    [Fact]
    public void A_plan_is_run_with_both_times()
    {
        var plan = CheckedPlan.Plan(Twice("waits 16 birds"));
        var day = CheckedPlan.Facts(plan).Day;
        Assert.Empty(day.Planned.Needs);
        Assert.Equal(400, day.Paced!.Outs.Count);
        Assert.Equal([400, 400], day.Paced.Steps.Where(s => s.Name.StartsWith("bench", StringComparison.Ordinal)).Select(s => s.Items));
        Assert.Equal(400 * (4 + 24), Ticks.Seconds(day.Paced.People.Sum(p => p.Working)));

        // Four people have 28 s of hand work on each, so no more than 514 an hour, less the ways.
        Assert.InRange(day.Rate, 60, 3600 * 4 / 28.0);

        // A wider bench helps both times, and is told once.
        var changes = DayChange.All(day.Planned.Line!)
            .Where(c => c.Text.Contains("bench", StringComparison.Ordinal)).ToList();
        Assert.Equal(changes.DistinctBy(c => c.Text).Count(), changes.Count);
        var wide = changes[0].Make(day.Planned.Line!).Steps.Where(s => s.Name == "bench").ToList();
        Assert.Equal([4, 4], wide.Select(s => s.Places));
    }

    [Fact]
    public void A_plan_that_locks_itself_is_told_with_what_to_write()
    {
        string text = Twice("").Replace("by hand 16 kg", "by conveyor", StringComparison.Ordinal)
            .Replace("workers 3 south, 750 apart", "worker south", StringComparison.Ordinal);
        var day = CheckedPlan.Facts(CheckedPlan.Plan(text)).Day;
        Assert.Null(day.Paced);
        var need = Assert.Single(day.Planned.Needs);
        Assert.StartsWith("the line locks itself after ", need.Missing, StringComparison.Ordinal);
        var told = Regex.Match(need.Write, "^`waits ([0-9]+) birds` in station bench");
        Assert.True(told.Success, need.Write);
        Assert.Equal("bench", need.Of);

        // What is asked for is enough.
        string mended = text.Replace(
            "  work 12 s each\n", $"  work 12 s each\n  waits {told.Groups[1].Value} birds\n", StringComparison.Ordinal);
        Assert.Equal(400, CheckedPlan.Facts(CheckedPlan.Plan(mended)).Day.Paced?.Outs.Count);
    }

    /// <summary>Written out of its order the product would end at the bench, half of it by another way: that is asked for.</summary>
    [Fact]
    public void Lines_of_a_flow_out_of_order_are_told()
    {
        string text = Twice("waits 16 birds").Replace(
            "outside -> d1 -> cones -> bench -> scald -> pluck -> bench -> rack by hand 16 kg",
            "outside -> d1 -> cones -> bench -> rack by hand 16 kg\n  bench -> scald -> pluck -> bench by hand 16 kg",
            StringComparison.Ordinal);
        var need = Assert.Single(CheckedPlan.Facts(CheckedPlan.Plan(text)).Day.Planned.Needs);
        Assert.Equal("bench", need.Of);
        Assert.Contains("as the last line of the flow", need.Write, StringComparison.Ordinal);
    }

    private static string Twice(string waits) => new DayLine { Bench = $"work 12 s each\n  {waits}", PerHour = 100, Hours = 4 }.Text
        .Replace("cones -> scald -> pluck -> bench -> rack", "cones -> bench -> scald -> pluck -> bench -> rack", StringComparison.Ordinal);

    private static ProductLine BenchAndMachine(int items, int waits)
    {
        var bench = new LineStep { Name = "bench", Work = TaskTime.OfSeconds(10), Crew = 0, Waits = waits };
        var line = TestLines.Of(
            new LineSupply(items, TaskTime.None), bench, new LineStep { Name = "machine", Stay = TaskTime.OfSeconds(20) },
            bench with { SameAs = 1, Time = 2 });
        return line with { Crews = [new("hands", 1)] };
    }
}
