using Floorplan.Model.Space;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation;

/// <summary>The day of a plan. The figures of poultry lines here are common practice, no source.</summary>
public sealed class PlannedDayTests
{
    /// <summary>
    /// Common practice, no source: bleeding of two minutes in 18 places is no limit at 200 an hour; 200 x 2 / 60 are in them.
    /// </summary>
    [Fact]
    public void Eighteen_places_to_bleed_are_no_limit()
    {
        var day = new DayLine().Day();
        Assert.True(day.KeepsUp, $"{day.Rate}");
        Assert.DoesNotContain(DayGains.Of(day).Single, g => g.Text.Contains("cones holds", StringComparison.Ordinal));
        Assert.InRange(Cones(day).GoingTime / Ticks.FromSeconds(2 * 3600), 200 * 2 / 60.0, (200 * 2 / 60.0) + 1);
    }

    /// <summary>The case that the check was silent on: one cone for two minutes and a bit serves at most 30 an hour.</summary>
    [Fact]
    public void One_place_to_bleed_is_a_limit()
    {
        var day = new DayLine { Cones = "work 4 s each\n  stays 2 min\n  holds 1 birds" }.Day();
        Assert.False(day.KeepsUp);
        Assert.InRange(day.Rate, 26, 3600 / 124.0);
        Assert.Equal("cones", DayGains.Best(day)!.Changes[0].Of);
    }

    /// <summary>
    /// Common practice, no source: batches of eight, a minute in the tank and under a minute in the plucker, carry 200 an hour with two
    /// people in front; hands at the bench are a crew of their own here.
    /// </summary>
    [Fact]
    public void Batches_of_eight_carry_two_hundred_an_hour()
    {
        string text = new DayLine { Bench = "work 12 s each\n  waits 24 birds" }.Text
            .Replace("crew kill 4", "crew kill 2, bench 3", StringComparison.Ordinal);
        var day = CheckedPlan.Facts(CheckedPlan.Plan(text)).Day;
        Assert.True(day.KeepsUp, $"{day.Rate}");
    }

    /// <summary>
    /// Four trays a shelf, eight birds a tray, ten shelves hold 320 (common practice, no source); five hours at 200 an hour make 1,000, and
    /// 320 are in after 320 / 200 h and the time on the line.
    /// </summary>
    [Fact]
    public void A_store_for_320_is_full_long_before_a_thousand_are_in()
    {
        var day = new DayLine { Hours = 5 }.Day();
        var store = Assert.Single(DayStore.Of(CheckedPlan.Plan(new DayLine { Hours = 5 }.Text), day));
        Assert.Equal(1_000, store.Items);
        Assert.Equal(320, store.Holds);
        Assert.InRange(Ticks.Hours(store.FullAt!.Value), 1.6, 1.75);
    }

    /// <summary>
    /// Common practice, no source: a line of two to eight people is limited by hands and not by the plucker, below some number. The tool
    /// names it: from there on one more person gains nothing.
    /// </summary>
    [Fact]
    public void Below_some_number_hands_limit_the_line()
    {
        double[] rates = [.. Enumerable.Range(1, 8).Select(n => new DayLine { Crew = n, PerHour = 1_000 }.Day().Rate)];
        int enough = Enumerable.Range(1, 7).First(n => rates[n] < rates[n - 1] * 1.02);
        Assert.InRange(enough, 3, 7);
        Assert.Equal("kill", DayGains.Best(new DayLine { Crew = 2, PerHour = 1_000 }.Day())!.Changes[0].Of);
        var next = DayGains.Best(new DayLine { Crew = enough, PerHour = 1_000 }.Day());
        Assert.DoesNotContain("person", next?.Text ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_is_named_with_what_to_write()
    {
        var day = new DayLine { Scald = "work heavy", Cones = "stays 2 min" }.Day();
        Assert.Null(day.FlatOut);
        Assert.Equal(["cones", "scald"], day.Planned.Needs.Select(n => n.Of).Order());
        Assert.Contains("`holds 8 birds`", day.Planned.Needs.Single(n => n.Of == "cones").Write, StringComparison.Ordinal);
    }

    [Fact]
    public void A_break_makes_the_day_longer_by_as_much()
    {
        var without = new DayLine { PerHour = 400 }.Day();
        var with = CheckedPlan.Facts(CheckedPlan.Plan(
            new DayLine { PerHour = 400 }.Text.Replace("  elsewhere", "  breaks 30 min\n  elsewhere", StringComparison.Ordinal))).Day;
        long more = End(with) - End(without);

        // What a machine does goes on while people rest, and hands are washed once more.
        Assert.InRange(more, Ticks.FromSeconds(26 * 60), Ticks.FromSeconds(31 * 60));

        static long End(PlannedDay day)
        {
            var line = day.Planned.Line!;
            return PlannedDay.Run(line with { Supply = line.Supply with { Every = TaskTime.None } }).End;
        }
    }

    /// <summary>Half an hour of two is a quarter of the pace, wherever the break falls in the run.</summary>
    [Fact]
    public void A_break_takes_its_share_of_the_pace()
    {
        var without = new DayLine { PerHour = 400 }.Day();
        var with = CheckedPlan.Facts(CheckedPlan.Plan(
            new DayLine { PerHour = 400 }.Text.Replace("  elsewhere", "  breaks 30 min\n  elsewhere", StringComparison.Ordinal))).Day;

        // What a machine does goes on while people rest.
        Assert.InRange(with.Rate / without.Rate, 0.75, 0.78);
    }

    /// <summary>Of one person a trip, of a tub of six a sixth of the trips.</summary>
    [Fact]
    public void A_tub_saves_trips()
    {
        var one = CheckedPlan.Facts(CheckedPlan.Plan(new DayLine().Text.Replace("by hand 16 kg", "by hand", StringComparison.Ordinal))).Day;
        var tub = CheckedPlan.Facts(CheckedPlan.Plan(
            new DayLine().Text.Replace("by hand 16 kg", "by hand, takes 6 birds", StringComparison.Ordinal))).Day;
        Assert.Equal(400, one.Paced!.Moves[0].Trips);
        Assert.Equal(67, tub.Paced!.Moves[0].Trips);
        Assert.True(tub.Paced.People.Sum(p => p.Metres) < one.Paced.People.Sum(p => p.Metres) / 3);
    }

    [Fact]
    public void Names_and_the_order_of_statements_change_nothing()
    {
        string text = new DayLine().Text;
        var was = CheckedPlan.Facts(CheckedPlan.Plan(text)).Day.Paced!;
        var renamed = CheckedPlan.Facts(CheckedPlan.Plan(
            text.Replace("cones", "zz", StringComparison.Ordinal).Replace("bench", "aa", StringComparison.Ordinal))).Day.Paced!;
        Assert.Equal(was.Outs, renamed.Outs);
        int day = text.IndexOf("\nday\n", StringComparison.Ordinal);
        int rack = text.IndexOf("store rack", StringComparison.Ordinal);
        int flow = text.IndexOf("flow product", StringComparison.Ordinal);
        string moved = text[..text.IndexOf("station cones", StringComparison.Ordinal)] + text[(day + 1)..] + "\n" + text[rack..flow]
            + text[text.IndexOf("station cones", StringComparison.Ordinal)..rack] + text[flow..day] + "\n";
        Assert.Equal(was.Outs, CheckedPlan.Facts(CheckedPlan.Plan(moved)).Day.Paced!.Outs);
    }

    /// <summary>A crew of nobody would leave everything where it is.</summary>
    [Fact]
    public void A_crew_of_nobody_is_told()
    {
        var day = new DayLine { Crew = 0 }.Day();
        Assert.Null(day.FlatOut);
        Assert.Equal("nobody works in kill", Assert.Single(day.Planned.Needs).Missing);
    }

    /// <summary>Somebody who carries things in from outside goes out for each of them.</summary>
    [Fact]
    public void The_way_out_to_fetch_is_walked_too()
    {
        string text = new DayLine { Crew = 1, PerHour = 10 }.Text.Replace("by hand 16 kg", "by hand", StringComparison.Ordinal);
        var day = CheckedPlan.Facts(CheckedPlan.Plan(text)).Day;
        var line = day.Planned.Line!;
        var without = PlannedDay.Run(line with { Places = [null, .. line.Places.Skip(1)] });
        double first = line.Moves[0].Metres * day.Planned.Items;
        Assert.InRange(day.Paced!.People.Sum(p => p.Metres) - without.People.Sum(p => p.Metres), 0.8 * first, double.MaxValue);
    }

    /// <summary>A day that would run for minutes is not run, and that is told.</summary>
    [Fact]
    public void A_day_that_is_too_long_to_run_is_told()
    {
        var day = new DayLine { PerHour = 40_000, Hours = 1, Crew = 200 }.Day();
        Assert.Null(day.FlatOut);
        Assert.Contains("40000 items through", Assert.Single(day.Planned.Needs).Missing, StringComparison.Ordinal);
    }

    /// <summary>A check counts its work by thread and may be broken off: what helps most is looked for on that thread.</summary>
    [Fact]
    public void What_a_check_asks_of_the_day_counts_as_work()
    {
        var day = new DayLine { Crew = 1, PerHour = 1_000, Hours = 10 }.Day();
        Assert.False(day.KeepsUp);
        Assert.False(Steps.Within(1_000, () => DayGains.Best(day)));
        Assert.True(Steps.Within(100_000_000, () => DayGains.Best(day)));
    }

    private static StepOutcome Cones(PlannedDay day) => day.Paced!.Steps.Single(s => s.Name == "cones");
}
