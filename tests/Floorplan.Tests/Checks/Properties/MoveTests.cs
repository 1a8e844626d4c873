using System.Globalization;
using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Properties;

/// <summary>A room with all that stands in it, moved about a large shed, keeps its faults, and their figures.</summary>
public sealed class MoveTests
{
    [Theory]
    [InlineData(2000, 1500)]
    [InlineData(9013, 1500)]
    [InlineData(2000, 6007)]
    [InlineData(11111, 7777)]
    public void Its_findings_stay_the_same(int east, int north)
    {
        var here = Found(3000, 3000);
        Assert.True(here.Count > 5, string.Join('\n', here));
        Assert.Equal(here, Found(east, north));
    }

    /// <summary>Findings on the things of the inner room; the ways through the hall to it change on purpose.</summary>
    private static List<string> Found(int east, int north) =>
    [
        .. CheckedPlan.Check(Plan(east, north)).Where(f => !f.Things.Contains("hall") && f.Things.Count > 0).Select(Text)
            .Order(StringComparer.Ordinal),
    ];

    private static string Text(Finding finding) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{finding.Rule} {finding.Severity} {string.Join(' ', finding.Things)} {finding.Measured:0.00} {finding.Mend}");

    private static string Plan(int east, int north) => FormattableString.Invariant($"""
        plan "Room in a hall"
          units metric
          code  us
        shell shed 24000 x 16000 x 3000
        room hall "Hall" dry from west to east
        room cut "Cutting" clean area 6000 x 4000 at {east}, {north}, in hall
        partitions thickness 100
        door d0 hall to outside, west wall, 500 from south, 1000 x 2100, swings out, opens from inside
        door d1 hall to outside, east wall, 500 from south, 1000 x 2100, swings out, opens from inside
        door d2 cut to hall, south wall, 300 from west, 700 x 2050, swings cut, closes itself
        station bench "Bench" in cut
          size    1800 x 1100 x 1150
          place   against north wall, 1000 from west
          workers 2 south, 500 apart
          work    20 s each
          needs   cold 8 L/min, drain
        station tank "Tank" in cut
          size   1500 x 900 x 900
          place  against south wall, 1500 from west
          worker north
          clear  north 1500 "crane hook"
        station block "Block" in cut
          size   600 x 600 x 900
          place  500 from east, 2600 from south
        sink s1 hand in cut, 400 x 350, corner south-east
        water w1 cold in cut, north wall, 500 from east, height 1200
        switch k1 in cut, west wall, 500 from north, height 1500
        outlet o1 in cut, east wall, 600 from south, height 1100, 16 A 230 V
        """);
}
