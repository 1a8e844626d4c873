using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class RoomsNotSeparatedTests
{
    [Theory]
    [InlineData("hatch h1 a to b, 300 from south, 700 x 500, sill 950", 0)]
    [InlineData("door x a to b, 300 from south, 900 x 2050, swings b, closes itself", 0)]
    [InlineData("door x a to b, 300 from south, 900 x 2050, swings b", 1)]
    [InlineData("opening x a to b, 300 from south, 900 x 2050", 1)]
    public void A_hatch_or_a_door_that_closes_itself_separates(string opening, int findings)
        => Assert.Equal(findings, Found("dirty", "clean", "thickness 80", opening).Count);

    [Theory]
    [InlineData("dirty", "cold", 1)]
    [InlineData("toilet", "clean", 1)]
    [InlineData("staff", "clean", 0)]
    [InlineData("clean", "cold", 0)]
    [InlineData("dirty", "staff", 0)]
    public void Only_dirty_and_clean_sides_must_be_kept_apart(string a, string b, int findings)
        => Assert.Equal(findings, Found(a, b, "thickness 80", "opening x a to b, 300 from south, 900 x 2050").Count);

    [Fact]
    public void A_low_partition_does_not_separate()
    {
        var finding = Assert.Single(Found("dirty", "clean", "thickness 80, height 2000", ""));

        Assert.Equal("the partition between A (a), dirty, and B (b), clean, ends 500 mm below the ceiling", finding.Message);
    }

    private static IReadOnlyList<Finding> Found(string a, string b, string partitions, string opening) => CheckedPlan.Check($"""
        plan "Goose unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room a "A" {a} from west to 4000
        room b "B" {b} from 4000 to east
        partitions {partitions}
        {opening}
        """, "rooms-not-separated");
}
