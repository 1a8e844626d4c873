using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shells;
using Floorplan.Model.Shells.Trailers;
using Xunit;

namespace Floorplan.Tests.Model.Shells;

public class TrailerShellTests
{
    [Fact]
    public void The_size_given_is_the_outside_and_walls_and_linings_come_off_it()
    {
        var inch = Length.FromInches(1);
        var built = Build(new ShellNotes { Linings = new Linings(inch, inch, inch * 2) });
        Assert.Equal(Length.FromInches(20 * 12).Millimetres, built.Shell.Outside.EnvelopeInternal.Width, 9);
        Assert.Equal(Length.FromInches((20 * 12) - 5), built.Finished.Bounds.Width);
        Assert.Equal(Length.FromInches((8 * 12) - 5), built.Finished.Bounds.Depth);
        Assert.Equal(Length.FromInches(8 * 12), built.Shell.Top - built.Shell.DatumHeight);
    }

    [Theory]
    [InlineData(Side.West, Side.East)]
    [InlineData(Side.East, Side.West)]
    public void The_hitch_is_away_from_the_doors(Side doors, Side hitch)
    {
        var shell = Build(new ShellNotes { DoorEnd = doors }).Shell;
        Assert.Equal(hitch, shell.HitchEnd);
        Assert.Equal(2, shell.Axles);
    }

    [Fact]
    public void Wheel_arches_stand_behind_the_middle_as_seen_from_the_hitch()
    {
        var shell = Build(new ShellNotes { DoorEnd = Side.West }).Shell;
        var arches = shell.Frame.Where(m => m.Part == FramePart.WheelArch).ToList();
        Assert.Equal(2, arches.Count);
        Assert.All(arches, a =>
        {
            double middle = ((a.From + a.To) / 2).Millimetres;
            Assert.True(middle < shell.Outside.Centroid.X);
            Assert.True(a.Top > Length.Zero);
        });
    }

    [Fact]
    public void Posts_stand_at_the_spacing_that_the_plan_gives()
    {
        var spacing = Length.FromInches(16);
        var shell = Build(new ShellNotes { PostSpacing = spacing }).Shell;
        var posts = shell.Frame.Where(m => m.Wall == Side.South && m.Name.StartsWith("south wall post", StringComparison.Ordinal)).ToList();
        Assert.Equal(14, posts.Count);
        Assert.All(posts.Zip(posts.Skip(1)), p => Assert.Equal(spacing, p.Second.From - p.First.From));
    }

    private static BuiltShell Build(ShellNotes notes)
        => TrailerShell.Build(Length.FromInches(20 * 12), Length.FromInches(8 * 12), Length.FromInches(8 * 12), 2, null, notes);
}
