using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Frames;

/// <summary>ISO 668:2013 (public copy): a 20 ft box is 6058 mm long outside.</summary>
public sealed class WallCutTests
{
    /// <summary>
    /// Three windows of 780 mm are cut 880 mm wide for their frames of 50 mm: 2640 of 6058 mm, 43.58 %. Counted clear they were 2340 mm,
    /// 38.6 %, and nothing was found, while sheet 6 had the welder cut 2640 mm.
    /// </summary>
    [Fact]
    public void A_wall_is_judged_by_the_holes_that_are_cut()
    {
        const string plan = """
            plan "Three windows"
              units metric
              code none
            shell container 20 ft high-cube
              lining walls 50, ceiling 50, floor 50
              doors west
            room work "Work room" dry from west to east
            window n1 work to outside, north wall, 500 from west, 780 x 600, sill 1200
            window n2 work to outside, north wall, 2200 from west, 780 x 600, sill 1200
            window n3 work to outside, north wall, 3900 from west, 780 x 600, sill 1200
            """;
        var cut = Assert.Single(CheckedPlan.Facts(CheckedPlan.Plan(plan)).WallCuts);
        var finding = Assert.Single(CheckedPlan.Check(plan, "wall-cut-too-much"));

        Assert.Equal(2640, cut.Length.Value, 1e-6);
        Assert.Equal(cut.Cuts.Sum(c => c.Width.Millimetres), cut.Length.Value, 1e-6);
        Assert.Equal(100 * 2640 / 6058.0, finding.Measured!.Value, 1e-6);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("2640 mm of 6058 mm", finding.Message);
    }

    /// <summary>
    /// Windows of 800 mm, 60 mm apart: the holes of 900 mm for their frames overlap by 40 mm. The rule said that 60 mm of wall are left.
    /// </summary>
    [Fact]
    public void Two_openings_are_as_close_as_their_holes()
    {
        const string plan = """
            plan "Two windows"
              units metric
              code none
            shell container 20 ft high-cube
              lining walls 50, ceiling 50, floor 50
              doors west
            room work "Work room" dry from west to east
            window n1 work to outside, north wall, 1000 from west, 800 x 600, sill 1200
            window n2 work to outside, north wall, 1860 from west, 800 x 600, sill 1200
            """;
        var cuts = CheckedPlan.Facts(CheckedPlan.Plan(plan)).CutOuts;

        var finding = Assert.Single(CheckedPlan.Check(plan, "openings-too-close"));

        Assert.Equal((cuts[1].Along - cuts[0].Right).Millimetres, finding.Measured!.Value, 1e-6);
        Assert.Equal(-40, finding.Measured.Value, 1e-6);
        Assert.Contains("40 mm into each other", finding.Message);
    }

    /// <summary>178 mm of post by ISO 1161, and a door 60 mm beside it: room for a tube of 50 mm, not for one of 80 mm.</summary>
    [Theory]
    [InlineData("", 0)]
    [InlineData("  frame none", 0)]
    [InlineData("  frame tube 80 x 80 x 4", 1)]
    public void A_frame_needs_its_own_breadth_beside_a_post(string frame, int found) => Assert.Equal(found, CheckedPlan.Check($"""
        plan "Door and post"
          units metric
          code none
        shell container 40 ft standard
          lining walls 60, floor 60
          doors  east
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 124 from west, 900 x 2050, swings out, opens from inside
        {frame}
        """, "cuts-frame").Count);
}
