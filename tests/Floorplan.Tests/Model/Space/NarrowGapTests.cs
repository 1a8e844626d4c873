using Floorplan.Model.Space;
using Floorplan.Tests.Model.Space.Support;
using Xunit;

namespace Floorplan.Tests.Model.Space;

public class NarrowGapTests
{
    [Fact]
    public void The_aisle_between_two_benches_is_the_narrowest()
    {
        var (space, route) = Aisle(700);
        var (width, at) = space.NarrowestAlong(route, 1500);
        Assert.Equal(700, width, 3);
        Assert.Equal(950, at.Y, 1);
        Assert.InRange(at.X, 2000, 4000);
    }

    [Fact]
    public void Nothing_is_reported_beyond_the_width_that_is_looked_at()
    {
        var (space, route) = Aisle(700);
        Assert.True(double.IsInfinity(space.NarrowestAlong(route, 600).WidthMm));
    }

    [Fact]
    public void A_diagonal_gap_is_measured_from_corner_to_corner()
    {
        var plan = new TestPlan(6000, 4000);
        var room = plan.Room("r", 0, 0, 6000, 4000);
        plan.Station("a", room, TestPlan.Rectangle(0, 0, 2700, 1800));
        plan.Station("b", room, TestPlan.Rectangle(3300, 2600, 6000, 4000));
        var space = new FloorSpace(plan.Build());
        var route = space.Find(room, new(1000, 3000), room, new(5000, 1000), Mover.Person)!;

        // 600 mm east and 800 mm north between the two corners: 1000 mm.
        Assert.Equal(1000, space.NarrowestAlong(route, 1500).WidthMm, 3);
    }

    /// <summary>A bench in a corner, used from its end: bench and wall meet there, and nobody walks between them.</summary>
    [Fact]
    public void An_inner_corner_is_no_gap()
    {
        var plan = new TestPlan(6000, 2600);
        var room = plan.Room("r", 0, 0, 6000, 2600);
        plan.Station("bench", room, TestPlan.Rectangle(5400, 1700, 6000, 2600));
        var space = new FloorSpace(plan.Build());
        var route = space.Find(room, new(5175, 2150), room, new(1000, 1300), Mover.Person)!;
        Assert.True(space.NarrowestAlong(route, 914).WidthMm > 914);
    }

    [Fact]
    public void A_doorway_and_a_thing_on_wheels_do_not_count()
    {
        var plan = new TestPlan(6000, 3000);
        var west = plan.Room("west", 0, 0, 2960, 3000);
        var east = plan.Room("east", 3040, 0, 6000, 3000);
        plan.UprightOpening("d", west, east, 1000, 1800, 2960, 3040);
        plan.Station("cart", east, TestPlan.Rectangle(4000, 2000, 4500, 2500), movable: true);
        var space = new FloorSpace(plan.Build());
        var route = space.Find(west, new(1000, 1400), east, new(5000, 1400), Mover.Person)!;
        Assert.True(space.NarrowestAlong(route, 1200).WidthMm > 1200);
    }

    private static (FloorSpace Space, Route Route) Aisle(double width)
    {
        var plan = new TestPlan(6000, 1900);
        var room = plan.Room("r", 0, 0, 6000, 1900);
        plan.Station("north", room, TestPlan.Rectangle(2000, 950 + (width / 2), 4000, 1900));
        plan.Station("south", room, TestPlan.Rectangle(2000, 0, 4000, 950 - (width / 2)));
        var space = new FloorSpace(plan.Build());
        return (space, space.Find(room, new(1000, 950), room, new(5000, 950), Mover.Person)!);
    }
}
