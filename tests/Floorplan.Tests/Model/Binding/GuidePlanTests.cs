using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Xunit;

namespace Floorplan.Tests.Model.Binding;

/// <summary>
/// The whole small plan of the language guide binds without a mistake, and everything is where its author meant it. Positions worked
/// out by hand.
/// </summary>
public class GuidePlanTests
{
    private static readonly Floorplan.Model.Plan Plan = PlanTexts.Whole(GuidePlan.Text);

    [Fact]
    public void The_finished_faces_stand_in_from_the_steel()
    {
        Assert.Equal(
            (11998.0 - 120, 2330.0 - 120), (Plan.Shell.Finished.EnvelopeInternal.Width, Plan.Shell.Finished.EnvelopeInternal.Height));
        Assert.Equal(2655 - 60 - 40, Plan.Shell.CeilingHeight.Millimetres);
    }

    [Theory]
    [InlineData("receiving", 0, 0, 3560, 2210)]
    [InlineData("filleting", 3640, 0, 8360, 2210)]
    [InlineData("lobby", 3640, 1110, 4940, 2210)]
    [InlineData("holding", 8440, 0, 11878, 2210)]
    public void Rooms_lie_between_their_partitions(string id, int west, int south, int east, int north)
        => Assert.Equal(Box(west, south, east, north), Plan.Rooms.Single(r => r.Id == id).Bounds);

    [Fact]
    public void The_room_that_the_lobby_is_carved_from_has_lost_its_floor()
        => Assert.Equal((4720 * 2210) - (1380 * 1180), Plan.Rooms.Single(r => r.Id == "filleting").Floor.Area, 6);

    [Theory]
    [InlineData("tipping", 1, 900, 1610, 2100, 2210)]
    [InlineData("gutting", 2, 2060, 0, 3460, 600)]
    [InlineData("chill", 3, 3740, 0, 5240, 650)]
    [InlineData("bench", 4, 5120, 1610, 6920, 2210)]
    [InlineData("packing", 5, 6860, 0, 8260, 600)]
    [InlineData("rack", 6, 9178, 1710, 11578, 2210)]
    [InlineData("offal-bin", 7, 1560, 0, 1960, 400)]
    [InlineData("frame-bin", 8, 7020, 1760, 7470, 2210)]
    [InlineData("s1", 9, 3640, 1210, 4040, 1560)]
    public void Things_stand_where_they_were_put_and_are_numbered_in_the_order_of_the_file(
        string id, int item, int west, int south, int east, int north)
    {
        var station = Plan.Stations.Single(s => s.Id == id);
        Assert.Equal(Box(west, south, east, north), station.Bounds);
        Assert.Equal(item, station.Item);
    }

    [Theory]
    [InlineData("d1", 500, -57, 1400, -57, true)]
    [InlineData("d2", 3840, 2267, 4740, 2267, true)]
    [InlineData("d3", 4980, 1310, 4980, 2110, false)]
    [InlineData("d4", 8400, 1000, 8400, 1900, false)]
    [InlineData("d5", 10478, -57, 11378, -57, true)]
    [InlineData("h1", 3600, 300, 3600, 1000, false)]
    public void Openings_are_cut_in_the_middle_of_their_walls(string id, int x1, int y1, int x2, int y2, bool inShell)
    {
        var opening = Plan.Openings.Single(o => o.Id == id);
        Assert.Equal((x1, y1), (opening.Start.X.Millimetres, opening.Start.Y.Millimetres));
        Assert.Equal((x2, y2), (opening.End.X.Millimetres, opening.End.Y.Millimetres));
        Assert.Equal(inShell, opening.InShell);
        Assert.Equal(opening.Width.Millimetres * (inShell ? 114 : 80), opening.Reveal.Area, 6);
    }

    [Fact]
    public void Workers_stand_along_their_side_of_the_station()
    {
        var bench = Plan.Stations.Single(s => s.Id == "bench");
        Assert.Equal([(5620.0, 1385.0), (6420.0, 1385.0)], bench.Workers.Select(w => (w.Centre.X.Millimetres, w.Centre.Y.Millimetres)));
    }

    [Fact]
    public void The_cargo_doors_are_in_the_west_end()
    {
        var doors = Plan.Openings.Single(o => o.Kind == OpeningKind.CargoDoor);
        Assert.Equal("receiving", doors.RoomA!.Id);
        Assert.Null(doors.RoomB);
        Assert.Equal(2210, doors.Width.Millimetres);
        Assert.Equal(2566 - 40, doors.Height.Millimetres);
    }

    [Fact]
    public void Services_fall_and_light_reach_their_rooms()
    {
        var filleting = Plan.Rooms.Single(r => r.Id == "filleting");
        Assert.Equal((0.02, "fd1"), (filleting.Falls!.Slope, filleting.Falls.DrainId));
        Assert.Equal(540, filleting.Lux);
        Assert.Equal(0, Plan.Rooms.Single(r => r.Id == "holding").KeepCelsius);
        var water = Plan.Services.OfType<WaterPoint>().Single(s => s.Id == "w1");
        Assert.Equal((5140.0, 2210.0, true, true), (water.At.X.Millimetres, water.At.Y.Millimetres, water.Cold, water.Hot));
        Assert.Equal(
            (6040.0, 1105.0),
            (Plan.Services.Single(s => s.Id == "fd1").At.X.Millimetres, Plan.Services.Single(s => s.Id == "fd1").At.Y.Millimetres));
        var hose = Plan.Services.OfType<Hose>().Single(s => s.Id == "hz1");
        Assert.Equal((water.At, "w1", 7500.0), (hose.At, hose.OnId, hose.Length!.Value.Millimetres));
    }

    [Fact]
    public void Flows_run_leg_by_leg_as_written()
    {
        var product = Plan.Flows.Single(f => f.Stream == Floorplan.Model.Flows.Stream.Product);
        Assert.Equal(
            [
                "outside>d1", "d1>tipping", "tipping>gutting", "gutting>h1", "h1>chill", "chill>bench", "bench>packing", "packing>d4",
                "d4>rack", "rack>d5", "d5>outside"],
            product.Legs.Select(l => $"{l.From.Name}>{l.To.Name}"));
        Assert.All(
            product.Legs.TakeLast(4), l => Assert.Equal(new Carriage(CarriageKind.Trolley, Length.FromMillimetres(600)), l.Carriage));
        Assert.All(
            Plan.Flows.Single(f => f.Stream == Floorplan.Model.Flows.Stream.People).Legs, l
                => Assert.Equal(CarriageKind.Walk, l.Carriage.Kind));
        Assert.Equal(
            [Period.During, Period.After, Period.After],
            Plan.Flows.Single(f => f.Stream == Floorplan.Model.Flows.Stream.Waste).Legs.Select(l => l.Period));
    }

    [Fact]
    public void Limits_and_acceptances_come_with_their_reasons()
    {
        var limit = Assert.Single(Plan.Limits);
        Assert.Equal(
            ("hand-sink-too-far", 4000.0, "agreed with the inspector on site"),
            (limit.Rule, limit.Length!.Value.Millimetres, limit.Reason));
        var accepted = Assert.Single(Plan.Acceptances);
        Assert.Equal(["d1"], accepted.Things);
        Assert.Equal(4, Plan.Day!.Crew["filleting"]);
    }

    private static Box Box(int west, int south, int east, int north)
        => new(Length.FromMillimetres(west), Length.FromMillimetres(south), Length.FromMillimetres(east), Length.FromMillimetres(north));
}
