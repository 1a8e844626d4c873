using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Properties;

/// <summary>What stands in another room far away, behind its own door, changes nothing here.</summary>
public sealed class UnrelatedThingTests
{
    private const string Plan = """
        plan "Two ends"
          units metric
        shell shed 30000 x 5000 x 2700
        room near "Near end" dirty from west to 8000
        room middle "Store" dry from 8000 to 22000
        room far "Far end" dirty from 22000 to east
        partitions thickness 100
        door d1 near to outside, west wall, centred, 1000 x 2100, swings out, opens from inside
        door d2 far to outside, east wall, centred, 1000 x 2100, swings out, opens from inside
        station bench "Bench" in near
          size 1800 x 1100 x 900
          place against north wall, 1000 from west
          workers 2 south
          needs cold 8 L/min, drain
        station tank "Tank" in near
          size 1500 x 900 x 900
          place against south wall, 1200 from west
        sink s1 hand in near, 400 x 350, corner south-east

        """;

    [Fact]
    public void It_changes_no_finding_here()
    {
        string more = Plan + "station rack \"Rack\" in far\n  size 2000 x 500 x 1800\n  place against north wall, centred\n";
        var before = CheckedPlan.Check(Plan).Where(f => !f.Things.Contains("far")).Select(f => f.Message).ToList();
        var after = CheckedPlan.Check(more).Where(f => !f.Things.Contains("far") && !f.Things.Contains("rack")).Select(f => f.Message)
            .ToList();

        Assert.True(before.Count > 3, string.Join('\n', before));
        Assert.Equal(before, after);
    }
}
