using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class ProductGoesBackTests
{
    [Theory]
    [InlineData("dirty", 1)]
    [InlineData("staff", 1)]
    [InlineData("dry", 0)]
    [InlineData("clean", 0)]
    [InlineData("cold", 0)]
    public void Product_may_not_enter_a_dirtier_class_but_may_go_to_a_dry_store(string hygieneClass, int findings)
        => Assert.Equal(findings, Found(hygieneClass, "trim -> d2 -> other").Count);

    [Fact]
    public void Leaving_the_building_is_not_going_back() => Assert.Empty(Found("dirty", "trim -> d1 -> outside"));

    [Fact]
    public void The_finding_names_rooms_and_stops()
    {
        var finding = Assert.Single(Found("dirty", "trim -> d2 -> other"));

        Assert.Equal(
            "product goes back from Dressing (dress), clean, to Side room (side), dirty, on its way from Trimming table (trim) to Other "
                + "table (other)", finding.Message);
        Assert.Equal(["trim", "other"], finding.Things);
    }

    private static IReadOnlyList<Finding> Found(string hygieneClass, string way) => CheckedPlan.Check($"""
        plan "Carp works"
          units metric
        shell shed 8000 x 3000 x 2500
        room dress "Dressing" clean from west to 4000
        room side "Side room" {hygieneClass} from 4000 to east
        partitions thickness 80
        door d1 dress to outside, south wall, 500 from west, 900 x 2050, swings out
        door d2 dress to side, 300 from south, 900 x 2050, swings side, closes itself
        station trim "Trimming table" in dress
          size 1200 x 600 x 900
          place against north wall, 500 from west
          worker south
        station other "Other table" in side
          size 1200 x 600 x 900
          place against north wall, 500 from west
          worker south
        flow product
          {way}   by hand
        """, "product-goes-back");
}
