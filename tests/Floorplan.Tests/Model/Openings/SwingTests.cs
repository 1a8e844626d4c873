using Floorplan.Language.Syntax;
using Floorplan.Model.Openings;
using Floorplan.Tests.Model.Binding;
using NetTopologySuite.Geometries;
using Xunit;

namespace Floorplan.Tests.Model.Openings;

public class SwingTests
{
    [Theory]
    [InlineData("wet to outside, south wall, 500 from west, 900 x 2000, swings out", null, 500, -100, 950, -550)]
    [InlineData("wet to outside, south wall, 500 from west, 900 x 2000, swings in", "wet", 500, 0, 950, 450)]
    [InlineData("wet to outside, south wall, 500 from east, 900 x 2000, swings out", null, 5460, -100, 5010, -550)]
    [InlineData("wet to outside, south wall, 500 from west, 900 x 2000, swings out, hinge east", null, 1400, -100, 950, -550)]
    [InlineData("wet to dry, 200 from south, 900 x 2000, swings dry", "dry", 6040, 200, 6490, 650)]
    [InlineData("wet to dry, 200 from north, 900 x 2000, swings wet", "wet", 5960, 3800, 5510, 3350)]
    public void A_leaf_hangs_on_the_face_that_it_opens_over(
        string door, string? into, double hingeX, double hingeY, double sweptX, double sweptY)
    {
        var swing = Door(door).Swing!;
        Assert.Equal(into, swing.Into?.Id);
        Assert.Equal((hingeX, hingeY), (swing.Hinge.X.Millimetres, swing.Hinge.Y.Millimetres));
        Assert.True(swing.Swept.Contains(new Point(sweptX, sweptY)));
        Assert.Equal(Math.PI * 900 * 900 / 4, swing.Swept.Area, 0.01 * 900 * 900);
        Assert.Equal(900, Assert.Single(swing.Leaves).Length, 6);
    }

    [Fact]
    public void A_double_door_has_two_leaves_of_half_the_width()
    {
        var swing = Door("wet to outside, south wall, centred, 1400 x 2000, double, swings out").Swing!;
        Assert.Equal(SwingKind.Double, swing.Kind);
        Assert.Equal([700.0, 700.0], swing.Leaves.Select(l => l.Length));
        Assert.Equal(2 * Math.PI * 700 * 700 / 4, swing.Swept.Area, 0.02 * 700 * 700);
    }

    [Theory]
    [InlineData("slides", SwingKind.Sliding, 1)]
    [InlineData("strip curtain", SwingKind.Strip, 0)]
    public void What_does_not_swing_sweeps_no_floor(string leaf, SwingKind kind, int leaves)
    {
        var swing = Door($"wet to dry, centred, 900 x 2000, {leaf}").Swing!;
        Assert.Equal(kind, swing.Kind);
        Assert.True(swing.Swept.IsEmpty);
        Assert.Equal(leaves, swing.Leaves.Count);
    }

    [Theory]
    [InlineData("hatch", 900)]
    [InlineData("window", 1100)]
    [InlineData("chute", 400)]
    public void A_sill_that_is_not_said_is_the_usual_one(string keyword, double sill)
    {
        var opening =
            PlanTexts.Whole(PlanTexts.TwoRooms
                + $"{keyword} x1 wet to dry, 300 from north, 600 x 500\n").Openings.Single(o => o.Id == "x1");
        Assert.Equal(sill, opening.Sill.Millimetres);
        Assert.Null(opening.Swing);
    }

    [Fact]
    public void The_wall_may_be_named_from_either_room()
    {
        var fromWet = Door("wet to dry, east wall, centred, 900 x 2000");
        var fromDry = Door("wet to dry, west wall, centred, 900 x 2000");
        Assert.Equal(fromWet.Start, fromDry.Start);
        Assert.Equal(Side.East, fromDry.Wall);
    }

    private static Opening Door(string door)
        => PlanTexts.Whole(
            PlanTexts.TwoRooms.Replace("hatch h1 wet to dry, 1500 from south, 800 x 500, sill 900", "", StringComparison.Ordinal)
                + $"door d1 {door}\n").Openings.Single();
}
