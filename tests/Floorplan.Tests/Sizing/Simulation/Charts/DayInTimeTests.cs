using Floorplan.Model.Space;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Charts;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Simulation.Charts;

/// <summary>The day as charts show it says the same as the sums of the run that it is made from.</summary>
public sealed class DayInTimeTests
{
    private const double Exact = 1e-9;

    public static TheoryData<string> Plans =>
        ["fish-20ft", "game-trailer", "goat-dairy-shed", "poultry-40ft", "vegetable-l-shed", "birds", "birds with a break",
            "birds, then geese"];

    [Theory, MemberData(nameof(Plans))]
    public void Every_slot_of_a_lane_is_shared_out_whole(string plan)
    {
        var day = Facts(plan).DayInTime!;
        Assert.NotEmpty(day.People);
        Assert.NotEmpty(day.Stations);
        Assert.All(
            day.People.Concat(day.Stations).SelectMany(l => l.Slots),
            slot =>
            {
                Assert.All(slot, share => Assert.InRange(share, 0, 1 + Exact));
                Assert.Equal(1, slot.Sum(), Exact);
            });
    }

    [Theory, MemberData(nameof(Plans))]
    public void Shares_of_people_sum_up_to_what_each_did(string plan)
    {
        var facts = Facts(plan);
        var day = facts.DayInTime!;
        Assert.All(day.People.Zip(facts.Day.Paced!.People), two =>
        {
            var (lane, person) = two;
            Assert.Equal(person.Working, Sum(day, lane, DayState.Work));
            Assert.Equal(person.Carrying, Sum(day, lane, DayState.Carry));
            Assert.Equal(person.Walking, Sum(day, lane, DayState.Walk));
            Assert.Equal(person.Emptying, Sum(day, lane, DayState.Empty));
            Assert.Equal(person.Washing, Sum(day, lane, DayState.Wash));
        });
    }

    [Fact]
    public void All_have_their_whole_break_though_what_was_begun_is_finished_first()
    {
        var facts = Facts("birds with a break");
        var day = facts.DayInTime!;
        long pause = 30 * Ticks.Minute;
        Assert.All(day.People, lane => Assert.InRange(Sum(day, lane, DayState.Rest), pause - 1, pause + 1));
    }

    [Theory, MemberData(nameof(Plans))]
    public void A_station_with_one_place_is_blocked_as_long_as_its_sum_says(string plan)
    {
        var facts = Facts(plan);
        var day = facts.DayInTime!;
        var paced = facts.Day.Paced!;
        foreach (var lane in day.Stations)
        {
            int step = paced.Steps.ToList().FindIndex(s => s.Name == lane.Name);
            if (paced.Line.Steps[step].Places == 1)
            {
                Assert.Equal((long)paced.Steps[step].GoingTime, Sum(day, lane, DayState.ByHand) + Sum(day, lane, DayState.ByItself));
                Assert.Equal((long)paced.Steps[step].BlockedTime, Sum(day, lane, DayState.Blocked));
            }
        }
    }

    [Theory, MemberData(nameof(Plans))]
    public void The_curve_of_a_store_ends_at_what_came_in_and_is_full_when_the_day_says_so(string plan)
    {
        var facts = Facts(plan);
        var stores = DayStore.Of(facts.Plan, facts.Day).ToList();
        Assert.NotEmpty(stores);
        foreach (var store in stores)
        {
            var curve = facts.DayInTime!.Fills.Single(f => f.Of == store.Id);
            Assert.Equal(store.Items, curve.Last);
            Assert.Equal(store.FullAt, curve.FullAt);
            Assert.Equal(store.Holds, curve.Holds);
        }
    }

    /// <summary>A store for 200 of 400 birds that come evenly in two hours is full after about one hour, and before it is not.</summary>
    [Fact]
    public void A_store_for_half_the_day_is_full_at_half_time()
    {
        var facts = Of(new DayLine { Store = "holds 200 birds" }.Text);
        var curve = facts.DayInTime!.Fills.Single(f => f.Of == "rack");
        Assert.Equal(400, curve.Last);
        Assert.InRange(curve.FullAt!.Value, 60 * Ticks.Minute, 70 * Ticks.Minute);
        Assert.All(curve.Points.Where(p => p.At < curve.FullAt - Ticks.Minute), p => Assert.True(p.Value <= 200, $"{p}"));
        Assert.Contains(curve.Points, p => p.At > curve.FullAt && p.Value > 200);
    }

    [Theory, MemberData(nameof(Plans))]
    public void A_bin_ends_at_what_came_in_when_nobody_empties_it(string plan)
    {
        var facts = Facts(plan);
        foreach (var bin in facts.Day.Paced!.Bins.Where(b => b.Emptied == 0))
        {
            var curve = facts.DayInTime!.Fills.Single(f => f.Of == bin.Bin.Name);
            Assert.Equal(bin.Kilograms, curve.Last, Exact);
            Assert.Equal(bin.FullAt, curve.FullAt);
        }
    }

    [Theory, MemberData(nameof(Plans))]
    public void Tanks_and_racks_never_hold_more_than_they_can_and_are_empty_at_the_end(string plan)
        => Assert.All(Facts(plan).DayInTime!.Fills.Where(f => f.Kind == DayCurveKind.Places), f =>
        {
            Assert.InRange(f.Most, 1, f.Holds!.Value);
            Assert.Equal(0, f.Last);
        });

    [Theory, MemberData(nameof(Plans))]
    public void What_is_out_grows_to_all_items(string plan)
    {
        var facts = Facts(plan);
        var points = facts.DayInTime!.Output.Points;
        Assert.Equal(facts.Day.Planned.Items, points[^1].Value);
        Assert.Equal(facts.Day.Paced!.Outs[^1], points[^1].At);
        Assert.All(points.Zip(points.Skip(1)), two => Assert.True(two.First.At < two.Second.At && two.First.Value <= two.Second.Value));
    }

    [Fact]
    public void Runs_of_two_products_are_taken_over_too()
    {
        var before = Of(Geese);
        _ = before.Day;
        var same = CheckedPlan.Plan(Geese.Replace("plan \"Birds\"", "plan \"Geese\"", StringComparison.Ordinal));
        Assert.Same(before.Day.FlatOut, new PlanFacts(same, before).Day.FlatOut);
        var other = CheckedPlan.Plan(Geese.Replace("batch 2 cycle 1 min", "batch 2 cycle 2 min", StringComparison.Ordinal));
        Assert.NotSame(before.Day.FlatOut, new PlanFacts(other, before).Day.FlatOut);
    }

    [Fact]
    public void More_people_in_the_crew_that_holds_the_line_up_make_it_faster()
    {
        var facts = Facts("birds");
        var pace = Assert.Single(facts.CrewPaces);
        Assert.Equal([3, 4, 5, 6, 7], pace.Rates.Select(r => r.People));
        Assert.Equal(facts.Day.Rate, pace.Rates.Single(r => r.People == pace.Now).Rate);
        Assert.True(pace.Rates[^1].Rate > pace.Rates[0].Rate);
    }

    private static long Sum(DayInTime day, DayLane lane, DayState state) => (long)Math.Round(lane.Slots.Index()
        .Sum(s => s.Item[(int)state] * (Math.Min(day.End, (s.Index + 1) * day.Slot) - (s.Index * day.Slot))));

    /// <summary>Two products whose batches and places differ.</summary>
    private static string Geese => new DayLine
    {
        Cones = "work 4 s each\n  stays 2 min\n  holds 18 birds\n  for geese work 10 s each holds 6 stays 3 min",
        Scald = "batch 8 birds\n  cycle 1 min\n  for geese batch 2 cycle 2 min",
        Pluck = "batch 8 birds\n  cycle 50 s\n  for geese batch 2 cycle 1 min",
        Store = "holds 600 birds\n  for geese holds 80",
    }.Text.Replace("product birds, 2 kg each", "product birds, 2 kg each\n  product geese, 5 kg each", StringComparison.Ordinal)
        .Replace("  crew kill", "  target 30 geese/h for 1 h\n  changeover 15 min\n  crew kill", StringComparison.Ordinal);

    private static PlanFacts Facts(string plan) => plan switch
    {
        "birds" => Of(new DayLine().Text),
        "birds with a break" => Of(
            new DayLine().Text.Replace("birds/h for 2 h", "birds/h for 2 h\n  breaks 30 min", StringComparison.Ordinal)),
        "birds, then geese" => Of(Geese),
        _ => Of(DrawnPlans.Text(plan)),
    };

    private static PlanFacts Of(string text)
    {
        var plan = CheckedPlan.Plan(text);
        return new PlanFacts(plan, new FloorSpace(plan));
    }
}
