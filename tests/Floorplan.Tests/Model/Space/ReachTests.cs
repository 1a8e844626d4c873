using Floorplan.Language.Syntax;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using Floorplan.Tests.Model.Space.Support;
using Xunit;

namespace Floorplan.Tests.Model.Space;

public class ReachTests
{
    /// <summary>Thumb-tip reach of a 5th-percentile woman, mm (ANSUR II, NATICK/TR-15/007).</summary>
    private const double Arm = 674;

    [Fact]
    public void Across_an_open_bench_the_reach_is_straight()
    {
        // A bin on the far side of a bench 650 deep: its near face is within an arm of the bench edge, and 700 deep is not.
        Assert.Equal(650, AcrossBench(650), 3);
        Assert.True(AcrossBench(650) < Arm);
        Assert.True(AcrossBench(700) > Arm);
    }

    [Fact]
    public void A_tall_thing_between_is_reached_round_and_a_low_one_over()
    {
        var plan = new TestPlan(6000, 4000);
        var room = plan.Room("r", 0, 0, 6000, 4000);
        var bench = plan.Station("bench", room, TestPlan.Rectangle(2000, 1000, 4000, 1600), worker: Side.South);
        var target = TestPlan.Rectangle(2950, 2000, 3050, 2100);
        var worker = bench.Workers[0];
        plan.Station("low", room, TestPlan.Rectangle(2800, 1650, 3200, 1900), top: 850);
        Assert.Equal(1000, new FloorSpace(plan.Build()).Reach(bench, worker, target, 900), 3);

        plan.Station("tall", room, TestPlan.Rectangle(2800, 1650, 3200, 1900), top: 1800);
        double round = new FloorSpace(plan.Build()).Reach(bench, worker, target, 900);

        // From 3000,1000 past the corner at 3200,1900 to 3050,2000.
        double expected = Math.Sqrt((200 * 200.0) + (650 * 650)) + 250 + Math.Sqrt((150 * 150.0) + (100 * 100));
        Assert.Equal(expected, round, 0);
    }

    [Fact]
    public void Behind_a_wall_nothing_is_within_reach_but_through_a_hatch_it_is()
    {
        var plan = new TestPlan(6000, 3000);
        var west = plan.Room("west", 0, 0, 2960, 3000);
        var east = plan.Room("east", 3040, 0, 6000, 3000);
        var bench = plan.Station("bench", west, TestPlan.Rectangle(2360, 1000, 2960, 2000), worker: Side.West);
        var target = TestPlan.Rectangle(3100, 1400, 3200, 1600);
        Assert.True(double.IsPositiveInfinity(new FloorSpace(plan.Build()).Reach(bench, bench.Workers[0], target, 950)));
        plan.UprightOpening("h", west, east, 1300, 1700, 2960, 3040, Floorplan.Model.Openings.OpeningKind.Hatch, 500, 950);
        Assert.Equal(740, new FloorSpace(plan.Build()).Reach(bench, bench.Workers[0], target, 950), 3);
    }

    private static double AcrossBench(double depth)
    {
        var plan = new TestPlan(6000, 4000);
        var room = plan.Room("r", 0, 0, 6000, 4000);
        Station bench = plan.Station("bench", room, TestPlan.Rectangle(2000, 1000, 4000, 1000 + depth), worker: Side.South);
        var bin = plan.Station("bin", room, TestPlan.Rectangle(2800, 1000 + depth, 3200, 1400 + depth), top: 700);
        return new FloorSpace(plan.Build()).Reach(bench, bench.Workers[0], bin.Footprint, 700);
    }
}
