using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Model.Shells.Sheds;
using Xunit;

namespace Floorplan.Tests.Model.Shells;

public class ShedShellTests
{
    [Fact]
    public void A_rectangular_shed_loses_its_walls_and_linings()
    {
        var notes = new ShellNotes { Linings = new Linings(Mm(20), Mm(20), Mm(80)), WallThickness = Mm(150) };
        var built = ShedShell.Build(Region.Of(new Box(Mm(0), Mm(0), Mm(10000), Mm(5000))), Mm(2700), "shed", notes);
        Assert.Equal(new Box(Mm(0), Mm(0), Mm(10000 - 340), Mm(5000 - 340)), built.Finished.Bounds);
        Assert.Equal(2600, built.Shell.CeilingHeight.Millimetres);
        Assert.Equal(-170, built.Shell.Datum.X.Millimetres);
    }

    [Fact]
    public void An_L_shaped_shed_keeps_its_shape_inside()
    {
        var built = ShedShell.Build(L(), Mm(2800), "L-shaped shed", new ShellNotes { Linings = new Linings(Mm(15), Mm(15), Mm(100)) });
        Assert.Equal(7, built.Shell.Finished.Coordinates.Length);
        var step = Assert.Single(built.Finished.Faces, f => f.Side == Side.East && f.At == Mm(5000 - 230));
        Assert.Equal(Mm(4500 - 230), step.From);
        Assert.Equal((12000 - 230) * (4500 - 230) + ((5000 - 230) * 4500.0), built.Finished.AreaSquareMillimetres);
        Assert.Equal(built.Finished.AreaSquareMillimetres, built.Shell.Finished.Area, 3);
    }

    [Fact]
    public void Posts_stand_at_every_corner_of_every_wall()
    {
        var shell = ShedShell.Build(L(), Mm(2800), "L-shaped shed", new ShellNotes()).Shell;
        Assert.Equal(12, shell.Frame.Count(m => m.Part == FramePart.Post));
    }

    private static Region L() => CornerList.ToRegion(
    [
        new(Mm(0), Mm(0)), new(Mm(12000), Mm(0)), new(Mm(12000), Mm(4500)), new(Mm(5000), Mm(4500)), new(Mm(5000), Mm(9000)),
        new(Mm(0), Mm(9000)),
    ]);

    private static Length Mm(double mm) => Length.FromMillimetres(mm);
}
