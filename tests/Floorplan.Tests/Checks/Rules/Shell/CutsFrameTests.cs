using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Rules.Shell;

/// <summary>
/// ISO 668:2013 (public copy of its table), outside and least inside length in mm: 6058 and 5867 (20 ft), 12 192 and 11 998 (40 ft);
/// width 2438 and 2330. ISO 1161: corner fittings 178 mm long. Steel is measured from the outside face.
/// </summary>
public sealed class CutsFrameTests
{
    private const double SideWall = (2438 - 2330) / 2.0;

    /// <summary>
    /// The closed end is as thick as a side wall (own assumption), and its post as long as a fitting: a door at the inside end meets
    /// it.
    /// </summary>
    [Theory]
    [InlineData("20 ft standard", 0)]
    [InlineData("20 ft standard", 60)]
    [InlineData("40 ft high-cube", 60)]
    public void A_door_at_the_closed_end_cuts_the_corner_post(string size, int lining)
    {
        var finding = Assert.Single(Found(size, lining, "0 from west"));

        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Equal(178 - SideWall - lining, finding.Measured!.Value, 0.01);
    }

    /// <summary>A hole of 60 mm, its middle 20 mm from the finished end: by ISO 1161 the post ends 178 mm from the outside face.</summary>
    [Theory]
    [InlineData(20, 1)]
    [InlineData(178 - SideWall - 60 + 30, 0)]
    public void A_pipe_through_a_post_is_a_cut_as_well(double west, int found)
    {
        var findings = CheckedPlan.Check(Invariant($"""
            plan "Pipe and post"
              units metric
            shell container 40 ft high-cube
              lining walls 60
              doors east
            room work "Work room" dry from west to east
            hole p1 "Water" in work, south wall, {west} from west, height 1000, 60
            """), "cuts-frame");

        Assert.Equal(found, findings.Count);
        Assert.All(
            findings, f => Assert.Equal((Severity.Error, 178 - SideWall - 60 - west + 30), (f.Severity, Math.Round(f.Measured!.Value, 6))));
    }

    /// <summary>Touching is not cutting; setting out on steel is no finer than 1 mm.</summary>
    [Theory]
    [InlineData(0, Severity.Warning)]
    [InlineData(2, Severity.Error)]
    public void A_cut_starts_at_the_edge_of_the_post(int into, Severity weight)
    {
        var finding = Assert.Single(Found("40 ft high-cube", 60, Invariant($"{178 - SideWall - 60 - into} from west")));

        Assert.Equal(weight, finding.Severity);
        Assert.Equal(into, finding.Measured!.Value, 0.01);
    }

    /// <summary>
    /// At the door end the doors stand within the depth of the post, 165 mm (typical builder's drawing, from memory): of what ISO
    /// 668 leaves for both ends 140 mm (40 ft) or 137 mm (20 ft) lie here. The post sticks out behind the bare end, and a lining hides it.
    /// </summary>
    [Theory]
    [InlineData("20 ft standard", 6058 - 5867, 0)]
    [InlineData("40 ft high-cube", 12_192 - 11_998, 0)]
    [InlineData("40 ft high-cube", 12_192 - 11_998, 60)]
    public void At_the_door_end_a_lining_covers_the_post(string size, int bothEnds, int lining)
    {
        double left = bothEnds - SideWall + lining - 165;

        var finding = Assert.Single(Found(size, lining, "0 from east"));

        Assert.Equal(left < 0 ? Severity.Error : Severity.Warning, finding.Severity);
        Assert.Equal(Math.Abs(left), finding.Measured!.Value, 0.01);
    }

    /// <summary>
    /// A real 40 ft box is up to 34 mm longer inside than the least (12 032 mm, builders' specifications), so a door set out from
    /// its inside end comes that much nearer to the post. Whatever would cut it there is at least warned of here.
    /// </summary>
    [Fact]
    public void What_would_cut_the_post_of_a_longer_real_box_is_warned_of()
    {
        const double realDoorEnd = 12_192 - 12_032 - SideWall;
        for (int edge = 0; realDoorEnd + 25 + edge < 165; edge += 5)
        {
            Assert.Single(Found("40 ft high-cube", 25, Invariant($"{edge} from east")));
        }
    }

    /// <summary>A 45 ft box, 13 716 mm, has a second set of posts at the 40 ft places, 762 mm from its ends.</summary>
    [Theory]
    [InlineData(940, 0)]
    [InlineData(930, 1)]
    public void A_45_ft_box_has_posts_inside_its_length(int fromOutside, int cuts)
        => Assert.Equal(
            cuts, Found("45 ft high-cube", 0, Invariant($"{fromOutside - SideWall} from west")).Count(f => f.Severity == Severity.Error));

    private static IReadOnlyList<Finding> Found(string size, int lining, string place) => CheckedPlan.Check($"""
        plan "Door and post"
          units metric
        shell container {size}
          lining walls {lining}
          doors  east
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, {place}, 900 x 2050, swings out, opens from inside
        """, "cuts-frame");
}
