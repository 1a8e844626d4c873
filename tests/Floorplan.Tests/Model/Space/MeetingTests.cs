using Floorplan.Language.Syntax;
using Floorplan.Model.Flows;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using Floorplan.Tests.Model.Space.Support;
using NetTopologySuite.Geometries;
using Xunit;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Tests.Model.Space;

public class MeetingTests
{
    [Fact]
    public void Routes_that_cross_meet_at_one_point()
    {
        var (plan, a, b, c, d) = Cross();
        plan.Flow(Stream.Product, CarriageKind.Hand, null, At(a), At(b));
        plan.Flow(Stream.Waste, CarriageKind.Hand, null, At(c), At(d));
        var meeting = Assert.Single(new FloorSpace(plan.Build()).Meetings);
        Assert.Equal(0, meeting.SharedMm);
        Assert.Equal(3000, meeting.At.X, 0);
        Assert.Equal(2000, meeting.At.Y, 0);
    }

    [Fact]
    public void Routes_that_run_together_say_how_far()
    {
        var (plan, a, b, _, _) = Cross();
        plan.Flow(Stream.Product, CarriageKind.Hand, null, At(a), At(b));
        plan.Flow(Stream.Waste, CarriageKind.Hand, null, At(b), At(a));
        var space = new FloorSpace(plan.Build());
        var meeting = Assert.Single(space.Meetings);
        Assert.Equal(space.LegRoutes[0].Route!.LengthMm, meeting.SharedMm, 3);
    }

    [Fact]
    public void Legs_of_one_flow_and_routes_apart_do_not_meet()
    {
        var plan = new TestPlan(6000, 4000);
        var room = plan.Room("r", 0, 0, 6000, 4000);
        Station South(int i) => plan.Station("s" + i, room, TestPlan.Rectangle(i * 1500, 0, (i * 1500) + 300, 300), worker: Side.North);
        Station North(int i) => plan.Station("n" + i, room, TestPlan.Rectangle(i * 1500, 3700, (i * 1500) + 300, 4000), worker: Side.South);
        plan.Flow(Stream.Product, CarriageKind.Walk, null, At(South(0)), At(South(2)), At(South(1)));
        plan.Flow(Stream.People, CarriageKind.Walk, null, At(North(0)), At(North(3)));
        Assert.Empty(new FloorSpace(plan.Build()).Meetings);
    }

    [Fact]
    public void Streams_that_pass_the_same_door_meet_there()
    {
        var plan = new TestPlan(6000, 3000);
        var west = plan.Room("west", 0, 0, 2960, 3000);
        var east = plan.Room("east", 3040, 0, 6000, 3000);
        var door = plan.UprightOpening("d", west, east, 1000, 2000, 2960, 3040);
        var a = plan.Station("a", west, TestPlan.Rectangle(0, 0, 600, 600), worker: Side.North);
        var b = plan.Station("b", east, TestPlan.Rectangle(5000, 2400, 6000, 3000), worker: Side.South);
        plan.Flow(Stream.Product, CarriageKind.Hand, null, At(a), new OpeningStop(door, TestPlan.Nowhere));
        plan.Flow(Stream.Waste, CarriageKind.Hand, null, At(b), new OpeningStop(door, TestPlan.Nowhere));
        var meeting = Assert.Single(new FloorSpace(plan.Build()).Meetings);
        Assert.Equal(new Coordinate(3000, 1500), meeting.At);
    }

    private static StationStop At(Station station) => new(station, TestPlan.Nowhere);

    private static (TestPlan Plan, Station West, Station East, Station South, Station North) Cross()
    {
        var plan = new TestPlan(6000, 4000);
        var room = plan.Room("r", 0, 0, 6000, 4000);
        return (plan,
            plan.Station("w", room, TestPlan.Rectangle(0, 1700, 600, 2300), worker: Side.East),
            plan.Station("e", room, TestPlan.Rectangle(5400, 1700, 6000, 2300), worker: Side.West),
            plan.Station("s", room, TestPlan.Rectangle(2700, 0, 3300, 600), worker: Side.North),
            plan.Station("n", room, TestPlan.Rectangle(2700, 3400, 3300, 4000), worker: Side.South));
    }
}
