using Floorplan.Language.Syntax;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Services;
using Floorplan.Model.Space;
using Floorplan.Tests.Model.Space.Support;
using NetTopologySuite.Geometries;
using Xunit;

namespace Floorplan.Tests.Model.Space;

public class StandingPlaceTests
{
    [Fact]
    public void A_worker_place_comes_first_and_otherwise_the_free_side()
    {
        var plan = new TestPlan(6000, 3000);
        var room = plan.Room("r", 0, 0, 6000, 3000);
        var manned = plan.Station("manned", room, TestPlan.Rectangle(1000, 0, 2000, 600), worker: Side.North);
        var corner = plan.Station("corner", room, TestPlan.Rectangle(5400, 2000, 6000, 3000));
        var space = new FloorSpace(plan.Build());
        Assert.Equal(new Coordinate(1500, 825), At(space, new StationStop(manned, TestPlan.Nowhere)));

        // Its west side is the longer one of the two that are free.
        Assert.Equal(new Coordinate(5175, 2500), At(space, new StationStop(corner, TestPlan.Nowhere)));
    }

    [Fact]
    public void A_hatch_is_used_from_the_room_that_is_asked_for_and_a_door_from_its_middle()
    {
        var plan = new TestPlan(6000, 3000);
        var west = plan.Room("west", 0, 0, 2960, 3000);
        var east = plan.Room("east", 3040, 0, 6000, 3000);
        var hatch =
            new OpeningStop(plan.UprightOpening("h", west, east, 1000, 1700, 2960, 3040, OpeningKind.Hatch, 500, 950), TestPlan.Nowhere);
        var door = new OpeningStop(plan.UprightOpening("d", west, east, 2000, 2900, 2960, 3040), TestPlan.Nowhere);
        var space = new FloorSpace(plan.Build());
        Assert.Equal(new Coordinate(2735, 1350), At(space, hatch, west));
        Assert.Equal(new Coordinate(3265, 1350), At(space, hatch, east));
        Assert.Equal(new Coordinate(3000, 2450), At(space, door));
    }

    [Fact]
    public void A_service_point_on_a_wall_is_used_from_the_floor_before_it()
    {
        var plan = new TestPlan(6000, 3000);
        var room = plan.Room("r", 0, 0, 6000, 3000);
        var water = new WaterPoint { Id = "w", Room = room, At = TestPlan.Point(1500, 3000) };
        var space = new FloorSpace(plan.Build() with { Services = [water] });
        Assert.Equal(new Coordinate(1500, 2775), At(space, new ServiceStop(water, TestPlan.Nowhere)));
    }

    private static Coordinate At(FloorSpace space, Stop stop, Floorplan.Model.Rooms.Room? room = null)
    {
        var c = space.StandingAt(stop, room)!;
        return new Coordinate(Math.Round(c.X), Math.Round(c.Y));
    }
}
