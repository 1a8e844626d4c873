using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shells;
using Floorplan.Model.Shells.Containers;
using Xunit;

namespace Floorplan.Tests.Model.Shells;

public class ContainerShellTests
{
    /// <summary>Outside and least inside sizes: ISO 668:2013 table (10 ft height and door: trade size).</summary>
    [Theory]
    [InlineData(10, false, 2991, 2591, 2802, 2350)]
    [InlineData(20, false, 6058, 2591, 5867, 2350)]
    [InlineData(20, true, 6058, 2896, 5867, 2655)]
    [InlineData(40, false, 12192, 2591, 11998, 2350)]
    [InlineData(40, true, 12192, 2896, 11998, 2655)]
    [InlineData(45, true, 13716, 2896, 13542, 2655)]
    public void Sizes_are_those_of_the_standard(int feet, bool highCube, double outside, double height, double inside, double insideHeight)
    {
        var shell = Build(feet, highCube, Linings.None).Shell;
        var outer = shell.Outside.EnvelopeInternal;
        var inner = shell.BareInside.EnvelopeInternal;
        Assert.Equal(outside, outer.Width);
        Assert.Equal(2438, outer.Height);
        Assert.Equal(inside, inner.Width, 9);
        Assert.Equal(2330, inner.Height);
        Assert.Equal(height, (shell.Top - shell.DatumHeight).Millimetres);
        Assert.Equal(insideHeight, shell.CeilingHeight.Millimetres);
        Assert.Equal(height - 241, shell.CeilingHeight.Millimetres);
    }

    /// <summary>Door openings: 7 ft 6 in x 7 ft 5 in, and 8 ft 5 in for a high-cube box.</summary>
    [Theory]
    [InlineData(false, 2261)]
    [InlineData(true, 2566)]
    public void Door_opening_is_at_least_that_of_the_standard(bool highCube, double height)
    {
        var door = Build(40, highCube, Linings.None).Door!;
        Assert.Equal(2286, door.Width.Millimetres);
        Assert.Equal(height, door.Height.Millimetres);
    }

    /// <summary>
    /// 2330 mm less twice 50 mm is 2230 mm; 2350 - 50 - 50 is 2250, and 2655 - 100 is 2555 (layout rules, fit arithmetic).
    /// </summary>
    [Theory]
    [InlineData(false, 2250)]
    [InlineData(true, 2555)]
    public void Linings_move_the_finished_faces_in(bool highCube, double ceiling)
    {
        var built = Build(40, highCube, All(50));
        Assert.Equal(Length.FromMillimetres(2230), built.Finished.Bounds.Depth);
        Assert.Equal(Length.FromMillimetres(11898), built.Finished.Bounds.Width);
        Assert.Equal(ceiling, built.Shell.CeilingHeight.Millimetres);
        Assert.Equal(Length.Zero, built.Finished.Bounds.West);
        Assert.Equal(Length.Zero, built.Finished.Bounds.South);
    }

    [Fact]
    public void Datum_is_the_outside_south_west_bottom_corner()
    {
        var shell = Build(20, false, All(50)).Shell;
        Assert.Equal(shell.Outside.EnvelopeInternal.MinX, shell.Datum.X.Millimetres);
        Assert.Equal(shell.Outside.EnvelopeInternal.MinY, shell.Datum.Y.Millimetres);
        Assert.Equal(-(54 + 50), shell.Datum.Y.Millimetres);
        Assert.True(shell.DatumHeight < -Length.FromMillimetres(50));
    }

    /// <summary>ISO 1161: corner fitting 178 x 162 x 118 mm.</summary>
    [Fact]
    public void Corners_have_castings_of_the_standard_size()
    {
        var castings = Build(20, false, Linings.None).Shell.Frame.Where(m => m.Part == FramePart.Casting).ToList();
        Assert.Equal(16, castings.Count);
        Assert.All(castings, c => Assert.Equal(118, (c.Top - c.Bottom).Millimetres));
        Assert.All(castings, c => Assert.Equal(c.Wall is Side.North or Side.South ? 178 : 162, (c.To - c.From).Millimetres));
    }

    [Theory]
    [InlineData(Side.West, Side.East)]
    [InlineData(Side.East, Side.West)]
    public void Door_end_has_header_and_sill_round_the_door_opening(Side doorEnd, Side front)
    {
        var shell = ContainerShell.Build(ContainerSizes.Find(40, true)!, new ShellNotes { DoorEnd = doorEnd }).Shell;
        var header = Assert.Single(shell.Frame, m => m.Name == "door header");
        var sill = Assert.Single(shell.Frame, m => m.Name == "door sill");
        Assert.Equal(doorEnd, header.Wall);
        Assert.Equal(2566, (header.Bottom - sill.Top).Millimetres);
        Assert.Equal(Length.Zero, sill.Top);
        Assert.Contains(shell.Frame, m => m.Part == FramePart.Header && m.Wall == front);
        var posts = shell.Frame.Where(m => m.Part == FramePart.Post && m.Wall == doorEnd).OrderBy(m => m.From.Nanometres).ToList();
        Assert.Equal(2286, (posts[1].From - posts[0].To).Millimetres);
    }

    /// <summary>45 ft boxes have a second set of posts at the 40 ft places, 12 192 mm apart.</summary>
    [Fact]
    public void A_45_ft_box_has_posts_at_the_40_ft_places()
    {
        var posts =
            Build(45, true, Linings.None).Shell.Frame.Where(m => m.Wall == Side.North && m.Name.Contains("40 ft", StringComparison.Ordinal))
                .ToList();
        Assert.Equal(2, posts.Count);
        Assert.Equal(12192, (posts[1].To - posts[0].From).Millimetres);
    }

    [Fact]
    public void Every_frame_member_says_where_its_size_comes_from_and_lies_on_its_wall()
    {
        foreach (var size in ContainerSizes.All)
        {
            var shell = ContainerShell.Build(size, new ShellNotes()).Shell;
            Assert.All(shell.Frame, m =>
            {
                Assert.NotEmpty(m.Origin);
                Assert.True(m.From < m.To && m.Bottom < m.Top);
                Assert.InRange(m.Bottom.Nanometres, shell.DatumHeight.Nanometres, shell.Top.Nanometres);
                Assert.InRange(m.Top.Nanometres, shell.DatumHeight.Nanometres, shell.Top.Nanometres);
            });
            Assert.All(Enum.GetValues<Side>(), side => Assert.Contains(shell.Frame, m => m.Wall == side && m.Part == FramePart.Post));
        }
    }

    private static Linings All(double mm) => new(Length.FromMillimetres(mm), Length.FromMillimetres(mm), Length.FromMillimetres(mm));

    private static BuiltShell Build(int feet, bool highCube, Linings linings)
        => ContainerShell.Build(ContainerSizes.Find(feet, highCube)!, new ShellNotes { Linings = linings });
}
