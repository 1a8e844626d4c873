using Floorplan.Model.Space;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>What a plan says of its day is what is run.</summary>
public sealed class DayWordsTests
{
    private static PlannedDay Day(string detail, string? bench = null)
        => CheckedPlan.Facts(CheckedPlan.Plan(Text(detail, bench))).Day;

    private static string Text(string detail, string? bench = null) => new DayLine { Bench = bench ?? new DayLine().Bench }.Text
        .Replace("  elsewhere", detail.Length > 0 ? $"  {detail}\n  elsewhere" : "  elsewhere", StringComparison.Ordinal);

    [Fact]
    public void Work_that_differs_gives_a_band_round_nearly_the_same_pace()
    {
        var steady = Day("");
        var spread = Day("", "work 12 s each, spread 30 %\n  waits 16 birds");
        Assert.Equal(0, steady.Pace.Half);
        Assert.InRange(spread.Pace.Half, 0.05, 0.05 * spread.Rate);
        Assert.InRange(spread.Rate, 0.95 * steady.Rate, 1.01 * steady.Rate);
    }

    /// <summary>Ten runs count as ten, and each as one: the fuzz found a day that was counted as 128 million steps.</summary>
    [Fact]
    public void A_run_with_a_spread_counts_the_work_of_one_run()
    {
        long steady = Counted("work 12 s each\n  waits 16 birds");
        Assert.True(steady > 0);
        Assert.InRange(Counted("work 12 s each, spread 30 %\n  waits 16 birds"), steady, 2 * steady);

        static long Counted(string bench)
        {
            var line = Day("", bench).Planned.Line!;
            long before = Steps.Taken;
            PlannedDay.Run(line with { Supply = line.Supply with { Items = 4_000 } });
            return Steps.Taken - before;
        }
    }

    /// <summary>The fuzz found a tank of 17,572 minutes, with a break: 23,000 rests a run, and half a minute for `day`.</summary>
    [Fact]
    public void A_day_of_months_does_not_rest_every_half_hour()
    {
        string text = Text("breaks 20 min").Replace("cycle 1 min", "cycle 17572 min", StringComparison.Ordinal);
        var run = CheckedPlan.Facts(CheckedPlan.Plan(text)).Day.FlatOut!;
        Assert.True(Ticks.Hours(run.End) > 1_000);
        Assert.InRange(run.Events, run.Outs.Count, 40L * run.Outs.Count);
    }

    [Fact]
    public void A_pause_and_second_work_take_their_time()
    {
        // A day at the pace of the target: 400 birds of 12 s; 16 pauses of 60 s; a tenth again.
        Assert.Equal(400 * 12, Bench("work 12 s each\n  waits 16 birds"));
        Assert.Equal((400 * 12) + (16 * 60), Bench("work 12 s each\n  pause 60 s every 25 birds\n  waits 16 birds"));
        Assert.Equal(440 * 12, Bench("work 12 s each\n  rework 10 %\n  waits 16 birds"));

        static double Bench(string figures)
        {
            var paced = Day("", figures).Paced!;
            double cones = 400 * 4;
            return Ticks.Seconds(paced.People.Sum(p => p.Working)) - cones;
        }
    }

    /// <summary>At 200 an hour, 50 come each quarter of an hour: all are in after 7 of them.</summary>
    [Fact]
    public void Items_come_in_loads_or_before_work()
    {
        var loads = Day("arrives 50 birds").Planned.Line!.Supply;
        Assert.Equal((50, 900.0), (loads.Load, Ticks.Seconds(loads.Every.Mean)));
        Assert.Equal(0, Day("arrives before work").Planned.Line!.Supply.Every.Mean);
        Assert.Equal(400, Day("arrives before work").Paced!.Outs.Count);
        Assert.Equal(1, Day("").Planned.Line!.Supply.Load);
    }

    /// <summary>40 s where the plan says nothing: FDA Food Code 2-301.12 asks for 20 s; with soap and drying an own estimate.</summary>
    [Fact]
    public void Hands_are_washed()
    {
        Assert.All(Day("").Paced!.People, p => Assert.Equal(40, Ticks.Seconds(p.Washing)));
        Assert.All(Day("hand wash 25 s").Paced!.People, p => Assert.Equal(25, Ticks.Seconds(p.Washing)));
        Assert.All(Day("hand wash 25 s\n  breaks 20 min").Paced!.People, p => Assert.Equal(50, Ticks.Seconds(p.Washing)));
    }

    [Fact]
    public void The_frame_of_the_day_goes_from_the_first_in_to_the_last_out()
    {
        var said = Frame("start-up 45 min\n  wash-down 1 h");
        Assert.Equal(45 * Ticks.Minute, said.StartUp);
        Assert.Equal(Ticks.Hour, said.WashDown);
        Assert.True(said.IsWashDownSaid);
        Assert.Equal(said.StartUp + said.HandsEnd + said.WashDown, said.CrewTime);

        // A shed of 48 m2 and five stations, for four people; the floor inside its walls is a little less.
        var estimated = Frame("");
        Assert.False(estimated.IsWashDownSaid);
        Assert.InRange(Ticks.Seconds(estimated.WashDown), ((44 * 60) + (5 * 300)) / 4.0, ((48 * 60) + (5 * 300)) / 4.0);

        static DayFrame Frame(string detail)
        {
            var plan = CheckedPlan.Plan(Text(detail));
            return DayFrame.Of(plan, CheckedPlan.Facts(plan).Day)!;
        }
    }

    [Fact]
    public void Two_trolleys_go_where_two_are_said()
    {
        string text = Text("").Replace("by hand 16 kg", "by trolley 500 wide, takes 20 birds, 2 trolleys", StringComparison.Ordinal);
        Assert.All(CheckedPlan.Facts(CheckedPlan.Plan(text)).Day.Planned.Line!.Moves, m => Assert.Equal((20, 2), (m.Load, m.Carriers)));
    }

    [Fact]
    public void A_crew_helps_where_the_plan_says_so()
    {
        string text = Text("helps bench from kill").Replace("crew kill 4", "crew kill 3, bench 1", StringComparison.Ordinal);
        var line = CheckedPlan.Facts(CheckedPlan.Plan(text)).Day.Planned.Line!;
        Assert.Equal([0], line.Crews.Single(c => c.Name == "kill").Helps);
        Assert.Empty(line.Crews.Single(c => c.Name == "bench").Helps);
    }

    [Fact]
    public void Help_of_a_crew_of_nobody_is_told()
    {
        var need = Assert.Single(Day("helps bench from kill").Planned.Needs);
        Assert.Equal(("bench", "nobody works in bench"), (need.Of, need.Missing));
    }

    [Theory]
    [InlineData("work 12 s each\n  rework 500 %", "out-of-range", "500 %")]
    [InlineData("work 12 s each, spread 101 %", "out-of-range", "101 %")]
    public void A_share_over_a_hundred_percent_is_a_mistake(string bench, string code, string words)
        => Assert.Contains(CheckedPlan.Bind(Text("", bench)).Diagnostics, d => d.Code == code && d.Span.Value == words);

    [Fact]
    public void Trolleys_where_things_go_by_hand_are_a_mistake()
    {
        string text = Text("").Replace("by hand 16 kg", "by hand 16 kg, 2 trolleys", StringComparison.Ordinal);
        Assert.Contains(CheckedPlan.Bind(text).Diagnostics, d => d.Code == "left-over" && d.Span.Value == "2 trolleys");
    }

    [Fact]
    public void Help_from_nobody_known_is_a_mistake_with_its_place()
    {
        var bound = CheckedPlan.Bind(Text("helps kil from kill"));
        Assert.Contains(bound.Diagnostics, d => d.Message.Contains("kil", StringComparison.Ordinal) && d.Span.Value == "kil");
    }
}
