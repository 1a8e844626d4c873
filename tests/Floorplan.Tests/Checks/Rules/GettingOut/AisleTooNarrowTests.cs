using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.GettingOut;

/// <summary>29 CFR 1910.36(g)(2): 28 in (711 mm) at all points of a way out.</summary>
public sealed class AisleTooNarrowTests
{
    private const string Shed = "shed 6000 x 2800 x 2800";

    /// <summary>2600 mm inside; a table of 600 mm leaves the rest to the tank and the way between.</summary>
    [Theory]
    [InlineData(712, Severity.Note)]
    [InlineData(710, Severity.Error)]
    public void On_a_way_out_it_is_the_law(int wide, Severity weight)
        => Assert.Equal(weight, Assert.Single(Found(Shed, 2600 - 600 - wide, Worked)).Severity);

    /// <summary>Nobody works beyond the pinch, so it is on nobody's way out; ISO 14122-2 asks for 600 mm, and 36 in are advised.</summary>
    [Fact]
    public void Beyond_every_way_out_it_is_advice()
        => Assert.Equal(Severity.Note, Assert.Single(Found(Shed, 2600 - 600 - 650, "")).Severity);

    [Fact]
    public void A_plans_own_limit_does_not_set_the_law_aside()
    {
        var finding = Assert.Single(Found(Shed, 2600 - 600 - 650, Worked, "limit aisle-too-narrow 500 mm \"agreed on site\""));

        Assert.Equal(Severity.Error, finding.Severity);
        Assert.Equal(711, finding.LimitValue!.Value, 0.5);
    }

    /// <summary>29 CFR 1910.34(a) leaves out mobile workplaces.</summary>
    [Fact]
    public void In_a_trailer_the_law_is_advice()
        => Assert.Equal(Severity.Warning, Assert.Single(Found("trailer 6000 x 2676.2 x 2800", 2600 - 600 - 650, Worked)).Severity);

    private const string Worked = "worker west";

    private static IReadOnlyList<Finding> Found(string shell, int tankDepth, string worker, string more = "") => CheckedPlan.Check($"""
        plan "Two rows"
          units metric
          code us
          plant retail
        shell {shell}
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 300 from west, 900 x 2050, swings out
        station tank "Brine tank" in cut
          size   1400 x {tankDepth} x 900
          place  against north wall, 2000 from west
        station table "Cutting table" in cut
          size   1400 x 600 x 900
          place  against south wall, 2000 from west
        station pack "Packing table" in cut
          size   600 x 900 x 900
          place  against east wall, 800 from south
          {worker}
        flow people "Packer"
          outside -> d1 -> pack
        {more}
        """, "aisle-too-narrow");
}
