using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;
using Xunit;

namespace Floorplan.Tests.Drawing.Views;

public class EmptyFloorTests
{
    /// <summary>1:50 with the plan's origin at 100, 100 on paper: a 4 x 2 m room is 80 x 40 mm.</summary>
    private static readonly PlanTransform Transform = new(50, new PaperPoint(100, 100));

    [Fact]
    public void An_empty_room_is_labelled_in_its_middle()
    {
        var place = new EmptyFloor(Rectangle(0, 0, 4000, 2000), Transform, []).Find(20, 10, new PaperPoint(140, 80))!.Value;

        Assert.Equal(140, place.Centre.X, 0);
        Assert.Equal(80, place.Centre.Y, 0);
    }

    [Fact]
    public void What_is_drawn_is_kept_clear()
    {
        var bench = new AreaItem([[new(120, 70), new(160, 70), new(160, 90), new(120, 90)]], "#FFFFFF", "L");
        var place = new EmptyFloor(Rectangle(0, 0, 4000, 2000), Transform, [bench]).Find(20, 10, new PaperPoint(140, 80))!.Value;

        Assert.False(place.Overlaps(new PaperBox(120, 70, 160, 90)), place.ToString());
    }

    [Fact]
    public void A_full_room_has_no_place()
    {
        var lines = Enumerable.Range(0, 20).Select(i => new LineItem(new(100, 60 + (i * 2)), new(180, 60 + (i * 2)), new Pen(0.25), "L"));

        Assert.Null(new EmptyFloor(Rectangle(0, 0, 4000, 2000), Transform, lines).Find(20, 10, new PaperPoint(140, 80)));
    }

    [Fact]
    public void The_notch_of_an_l_shaped_room_is_not_its_floor()
    {
        var room =
            Shape.Factory.CreatePolygon(
                [new(0, 0), new(4000, 0), new(4000, 1000), new(2000, 1000), new(2000, 2000), new(0, 2000), new(0, 0)]);
        var place = new EmptyFloor(room, Transform, []).Find(20, 10, new PaperPoint(175, 65))!.Value;

        Assert.False(place.Overlaps(new PaperBox(141, 60, 180, 79)), place.ToString());
    }

    private static Polygon Rectangle(double west, double south, double east, double north) => Shape.Factory.CreatePolygon(
        [new(west, south), new(east, south), new(east, north), new(west, north), new(west, south)]);
}
