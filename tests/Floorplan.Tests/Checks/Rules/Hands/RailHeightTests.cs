using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hands;

/// <summary>Which rails hands hang product on, and rails that the ceiling does not allow.</summary>
public sealed class RailHeightTests
{
    private static readonly string High = RuleCatalogue.Find("rail-height")!.Bad;

    [Fact]
    public void Hooks_out_of_reach_are_told_with_the_station_and_a_way_down()
    {
        var finding = Assert.Single(CheckedPlan.Check(High, "rail-height"));

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("Hanging table (table), 2200 mm above the floor", finding.Message, StringComparison.Ordinal);
        Assert.Contains("274 mm", finding.Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("product ducks, 2.5 kg each", "product deer, 45 kg each")] // hoisted
    [InlineData("product ducks, 2.5 kg each", "product ducks")] // nobody says that hands can
    [InlineData("700 2300, 3300 2300", "700 300, 3300 300")] // on the other side of the room
    [InlineData("table -> pluck by rail", "table -> pluck by hand")]
    public void Hooks_that_hands_do_not_hang_on_may_be_high(string from, string to)
    {
        Assert.Contains(from, High, StringComparison.Ordinal);

        Assert.Empty(CheckedPlan.Check(High.Replace(from, to, StringComparison.Ordinal), "rail-height"));
    }

    [Theory]
    [InlineData(2600, 1)]
    [InlineData(2599, 0)]
    public void Hooks_hang_under_the_ceiling(int height, int errors)
    {
        var found = CheckedPlan.Check(High.Replace("height 2200", $"height {height}", StringComparison.Ordinal), "rail-height");

        Assert.Equal(errors, found.Count(f => f.Severity == Severity.Error));
        Assert.Single(found);
    }
}
