using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Frames.Sizes;

/// <summary>ISO 668:2013 (public copy): a 20 ft box is 6058 mm long outside.</summary>
public sealed class SteelSizesTests
{
    private const string Windows = """
        window n1 work to outside, north wall, 500 from west, 780 x 600, sill 1200
        window n2 work to outside, north wall, 2200 from west, 780 x 600, sill 1200
        """;

    /// <summary>
    /// By hand: windows of 780 mm are cut 880 mm wide for frames of 50 mm; a hatch below the first, 780 wide and 400 mm farther on,
    /// lies under it for 480 mm. Longwise 880 + 400 + 880 = 2160 mm are cut; at the level of the windows only 1760 mm.
    /// </summary>
    [Fact]
    public void What_lies_above_another_counts_once_and_the_worst_level_is_told()
    {
        var figures = Subject(Windows + "\nhatch h1 work to outside, north wall, 900 from west, 780 x 300, sill 700\n")
            .Figures.ToDictionary(f => f.Name);

        Assert.Equal(2160, figures["length cut out of the north wall"].Value, 1e-6);
        Assert.Equal(6058 - 2160, figures["length left of the north wall"].Value, 1e-6);
        Assert.Equal(1760 / 6058.0, figures["share of the north wall cut at the worst level"].Value, 1e-9);
    }

    /// <summary>
    /// Between the holes 2200 - 50 - (500 + 780 + 50) = 820 mm; before the first 6058 - 5867 - 54 = 137 mm of door end (ISO 668), 50 mm of
    /// lining and 500 - 50 mm: 637 mm.
    /// </summary>
    [Fact]
    public void The_narrowest_piece_is_told()
    {
        var narrowest = Subject(Windows).Figures.Single(f => f.Name == "narrowest piece left of the north wall");

        Assert.Equal(637, narrowest.Value, 1e-6);
        Assert.Equal("637 mm", narrowest.Text);
    }

    [Theory]
    [InlineData(400, false)]
    [InlineData(4000, true)]
    public void A_wall_that_is_mostly_cut_out_needs_an_engineers_design(int width, bool needs)
    {
        var cautions = Subject($"hatch h1 work to outside, north wall, 700 from west, {width} x 900, sill 1000\n").Cautions;

        Assert.Contains(cautions, c => c.Contains("Have an engineer confirm", StringComparison.Ordinal));
        Assert.Equal(needs, cautions.Any(c => c.Contains("An engineer designs", StringComparison.Ordinal)));
        Assert.DoesNotContain(cautions, c => c.Contains("approved", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>A wider hole never leaves more wall.</summary>
    [Theory]
    [InlineData(400, 500)]
    [InlineData(900, 2500)]
    public void A_wider_hole_never_leaves_more(int narrow, int wide)
    {
        double Left(int width) => Subject($"hatch h1 work to outside, north wall, 700 from west, {width} x 900, sill 1000\n")
            .Figures.Single(f => f.Name == "length left of the north wall").Value;

        Assert.True(Left(wide) < Left(narrow));
    }

    [Fact]
    public void Names_are_told_once_and_rows_show_figures_that_are_listed()
    {
        var subject = Subject(Windows);
        var all = new HashSet<Figure>(subject.Figures, ReferenceEqualityComparer.Instance);

        Assert.Equal(subject.Figures.Count, subject.Figures.Select(f => f.Name).Distinct().Count());
        Assert.All(subject.Rows, r => Assert.Contains(r.Figure!, all));
        Assert.All(subject.Tables.SelectMany(t => t.Figures), f => Assert.Contains(f, all));
    }

    private static SizedSubject Subject(string openings) => CheckedPlan.Facts(CheckedPlan.Plan($"""
        plan "Box"
          units metric
          code none
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors west
        room work "Work room" dry from west to east
        {openings}
        """)).SteelSizes!;
}
