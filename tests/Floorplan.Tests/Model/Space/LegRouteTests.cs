using Floorplan.Language.Syntax;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Space;
using Floorplan.Tests.Model.Space.Support;
using NetTopologySuite.Geometries;
using Xunit;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Tests.Model.Space;

public class LegRouteTests
{
    [Fact]
    public void Product_goes_from_worker_to_worker_through_the_door_that_is_named()
    {
        var (plan, west, east) = Unit();
        plan.UprightOpening("d1", west, east, 300, 1200, 2960, 3040);
        var d2 = plan.UprightOpening("d2", west, east, 1800, 2700, 2960, 3040);
        var a = plan.Station("a", west, TestPlan.Rectangle(500, 0, 1500, 600), worker: Side.North);
        var b = plan.Station("b", east, TestPlan.Rectangle(4500, 0, 5500, 600), worker: Side.North);
        plan.Flow(Stream.Product, CarriageKind.Hand, null, At(a), At(d2), At(b));
        var legs = new FloorSpace(plan.Build()).LegRoutes;
        Assert.All(legs, l => Assert.Equal(Mover.Carrying, l.Mover));
        Assert.Equal(new Coordinate(3000, 2250), legs[0].Route!.Path.EndPoint.Coordinate);
        Assert.Equal(legs[0].Route!.Path.EndPoint, legs[1].Route!.Path.StartPoint);
        Assert.Equal(["west"], legs[0].Route!.Rooms.Select(r => r!.Id));
        Assert.Equal(["east"], legs[1].Route!.Rooms.Select(r => r!.Id));
        Assert.Equal(["d2"], legs[1].Route!.Openings.Select(o => o.Id));

        // The product is taken over as near to the worker as arms full allow: 333 mm off the bench.
        Assert.Equal(600 + (667 / 2.0), legs[0].Route!.Path.StartPoint.Y, 0.1);
    }

    [Fact]
    public void A_leg_takes_a_door_that_is_not_named_only_when_it_must()
    {
        var (plan, west, east) = Unit();
        var near = plan.UprightOpening("near", west, east, 300, 1200, 2960, 3040);
        var a = plan.Station("a", west, TestPlan.Rectangle(500, 0, 1500, 600), worker: Side.North);
        var b = plan.Station("b", east, TestPlan.Rectangle(4500, 0, 5500, 600), worker: Side.North);
        plan.Flow(Stream.People, CarriageKind.Walk, null, At(a), At(b));
        var leg = new FloorSpace(plan.Build()).LegRoutes.Single();
        Assert.Equal(["west", "east"], leg.Route!.Rooms.Select(r => r!.Id));
        Assert.Equal(near.Id, leg.Route.Openings.Single().Id);
    }

    [Fact]
    public void Product_is_handed_straight_through_a_hatch_within_reach()
    {
        var (plan, west, east) = Unit();
        var hatch = plan.UprightOpening("h", west, east, 1000, 1700, 2960, 3040, OpeningKind.Hatch, 500, 950);
        var a = plan.Station("a", west, TestPlan.Rectangle(2000, 100, 2900, 700), worker: Side.North);
        var b = plan.Station("b", east, TestPlan.Rectangle(5000, 0, 6000, 600), worker: Side.North);
        plan.Flow(Stream.Product, CarriageKind.Hand, null, At(a), At(hatch), At(b));
        var legs = new FloorSpace(plan.Build()).LegRoutes;
        Assert.Equal([a.Workers[0].Centre.Coordinate, new(3000, 1350)], legs[0].Route!.Path.Coordinates);

        // On the far side hands take it out of the hatch and somebody walks.
        Assert.Equal(new Coordinate(3000, 1350), legs[1].Route!.Path.StartPoint.Coordinate);
        Assert.Equal(["east"], legs[1].Route!.Rooms.Select(r => r!.Id));
        Assert.Equal(["h"], legs[1].Route!.Openings.Select(o => o.Id));
    }

    [Fact]
    public void Neighbours_hand_over_in_a_straight_line()
    {
        var (plan, west, _) = Unit();
        var a = plan.Station("a", west, TestPlan.Rectangle(300, 0, 1200, 600), worker: Side.North);
        var b = plan.Station("b", west, TestPlan.Rectangle(1200, 0, 2100, 600), worker: Side.North);
        plan.Flow(Stream.Product, CarriageKind.Hand, null, At(a), At(b));
        var leg = new FloorSpace(plan.Build()).LegRoutes.Single();
        Assert.Equal([a.Workers[0].Centre.Coordinate, b.Workers[0].Centre.Coordinate], leg.Route!.Path.Coordinates);
    }

    [Fact]
    public void From_outside_the_leg_comes_in_by_the_door_it_names()
    {
        var (plan, west, _) = Unit();
        var near = plan.Opening("near", null, west, 300, 1200, -100, 0);
        var far = plan.Opening("far", west, null, 300, 1200, 3000, 3100);
        var a = plan.Station("a", west, TestPlan.Rectangle(2000, 0, 2900, 600), worker: Side.North);
        plan.Flow(Stream.People, CarriageKind.Walk, null, Out, At(far), At(a));
        plan.Flow(Stream.People, CarriageKind.Walk, null, Out, At(a));
        var legs = new FloorSpace(plan.Build()).LegRoutes;
        Assert.Equal([null], legs[0].Route!.Rooms);
        Assert.True(legs[0].Route!.Path.StartPoint.Y > 3100 && legs[0].Route!.Path.StartPoint.X == 750);
        Assert.Equal([near.Id], legs[2].Route!.Openings.Select(o => o.Id));
        Assert.Equal([null, "west"], legs[2].Route!.Rooms.Select(r => r?.Id));
    }

    [Theory]
    [InlineData(560, 900, "no way 600 mm wide from a to b: only 560 mm is free between rack and the wall; up to 550 mm wide could pass")]
    [InlineData(800, 550, "no way 600 mm wide from a to b: d is only 550 mm wide; up to 550 mm wide could pass")]
    [InlineData(0, 900, "no way 600 mm wide from a to b: no opening and no gap leads there")]
    public void A_blocked_leg_says_what_blocks_and_what_would_pass(double gap, double door, string sentence)
    {
        var (plan, west, east) = Unit();
        plan.UprightOpening("d", west, east, 1000, 1000 + door, 2960, 3040);
        plan.Station("rack", west, TestPlan.Rectangle(1800, gap, 2100, 3000), top: 1800);
        var a = plan.Station("a", west, TestPlan.Rectangle(0, 0, 600, 600), worker: Side.North);
        var b = plan.Station("b", east, TestPlan.Rectangle(4500, 0, 5500, 600), worker: Side.North);
        plan.Flow(Stream.Product, CarriageKind.Trolley, null, At(a), At(b));
        var leg = new FloorSpace(plan.Build()).LegRoutes.Single();
        Assert.Null(leg.Route);
        Assert.Equal(sentence, leg.Blocked);
    }

    [Fact]
    public void A_low_door_is_named()
    {
        var (plan, west, east) = Unit();
        plan.UprightOpening("d", west, east, 1000, 1900, 2960, 3040, height: 1700);
        var a = plan.Station("a", west, TestPlan.Rectangle(0, 0, 600, 600), worker: Side.North);
        var b = plan.Station("b", east, TestPlan.Rectangle(4500, 0, 5500, 600), worker: Side.North);
        plan.Flow(Stream.Product, CarriageKind.Trolley, 700, At(a), At(b));
        Assert.Equal("no way 700 mm wide from a to b: d is only 1700 mm high", new FloorSpace(plan.Build()).LegRoutes.Single().Blocked);
    }

    [Theory]
    [InlineData(700, "a person carrying")]
    [InlineData(500, "a person")]
    public void Somebody_who_carries_turns_sideways_where_arms_full_do_not_pass(double aisle, string mover)
    {
        var leg = Aisle(aisle);
        Assert.NotNull(leg.Route);
        Assert.Equal(mover, leg.Mover.Name);
    }

    [Fact]
    public void Where_nobody_fits_at_a_station_the_sentence_names_it() => Assert.Equal(
        "no way 450 mm wide from a to b: there is no room for a person at a; up to 400 mm wide could pass", Aisle(400).Blocked);

    [Fact]
    public void A_belt_runs_straight_and_a_rail_leg_follows_its_rail()
    {
        var (plan, west, east) = Unit();
        plan.UprightOpening("o", west, east, 1000, 1700, 2960, 3040, OpeningKind.Hatch, 500, 950);
        plan.Rail("rail", (1000, 2500), (2500, 2500), (2500, 1500), (5000, 1500));
        var a = plan.Station("a", west, TestPlan.Rectangle(500, 1000, 1500, 1600));
        var b = plan.Station("b", east, TestPlan.Rectangle(4500, 1000, 5500, 1600));
        plan.Flow(Stream.Product, CarriageKind.Conveyor, null, At(a), At(b));
        plan.Flow(Stream.Supplies, CarriageKind.Rail, null, At(a), At(b));
        var legs = new FloorSpace(plan.Build()).LegRoutes;
        Assert.Equal(3000, legs[0].Route!.LengthMm, 6);
        Assert.Equal(["west", "east"], legs[0].Route!.Rooms.Select(r => r!.Id));
        Assert.Equal(["o"], legs[0].Route!.Openings.Select(o => o.Id));
        Assert.Contains(new Coordinate(2500, 2500), legs[1].Route!.Path.Coordinates);
        Assert.Contains(new Coordinate(2500, 1500), legs[1].Route!.Path.Coordinates);
    }

    /// <summary>From a bench in the middle of an aisle to a bench beyond it.</summary>
    private static LegRoute Aisle(double width)
    {
        var plan = new TestPlan(6000, 1200 + width);
        var room = plan.Room("r", 0, 0, 6000, 1200 + width);
        plan.Station("rack", room, TestPlan.Rectangle(0, 600 + width, 4000, 1200 + width));
        var a = plan.Station("a", room, TestPlan.Rectangle(0, 0, 2400, 600), worker: Side.North);
        var b = plan.Station("b", room, TestPlan.Rectangle(4800, 0, 5800, 600), worker: Side.North);
        plan.Flow(Stream.Product, CarriageKind.Hand, null, At(a), At(b));
        return new FloorSpace(plan.Build()).LegRoutes.Single();
    }

    private static Stop Out => new OutsideStop(TestPlan.Nowhere);

    private static StationStop At(Floorplan.Model.Stations.Station station) => new(station, TestPlan.Nowhere);

    private static OpeningStop At(Opening opening) => new(opening, TestPlan.Nowhere);

    private static (TestPlan Plan, Floorplan.Model.Rooms.Room West, Floorplan.Model.Rooms.Room East) Unit()
    {
        var plan = new TestPlan(6000, 3000);
        return (plan, plan.Room("west", 0, 0, 2960, 3000), plan.Room("east", 3040, 0, 6000, 3000));
    }
}
