using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.File;

public sealed class UnusedTests
{
    [Theory]
    [InlineData("station tank in extract\n  size 700 x 700 x 1000\n  place against north wall, 3000 from west", 1)]
    [InlineData("station tank in extract\n  size 700 x 700 x 1000\n  place against north wall, 3000 from west\n  worker south", 0)]
    [InlineData(
        "station tank in extract\n  size 700 x 700 x 1000\n  place against north wall, 3000 from west\n  worker south\n  work 5 s each", 1)]
    [InlineData("station ac \"Air conditioner\" in extract, 700 x 300 x 300, against north wall, 3000 from west, hung, underside 2100", 0)]
    [InlineData("station tank \"Fresh water tank\" in extract, 700 x 700 x 1000, against north wall, 3000 from west", 0)]
    [InlineData("station cart in extract, 700 x 500 x 900, against north wall, 3000 from west, on wheels", 0)]
    [InlineData("bin b1 60 L in extract, 450 x 450, against north wall, 3000 from west", 1)]
    [InlineData("sink s1 hand in extract, 400 x 350, against north wall, 3000 from west", 0)]
    [InlineData("door d9 extract to outside, south wall, 3000 from west, 900 x 2050, swings out", 0)]
    [InlineData("hatch h9 extract to store, 300 from south, 700 x 500, sill 950", 1)]
    [InlineData("window v9 extract to outside, south wall, 3000 from west, 900 x 600, sill 1200", 0)]
    public void What_has_no_user_is_noted(string thing, int findings) => Assert.Equal(findings, Found(thing).Count);

    [Fact]
    public void A_bin_that_a_station_fills_is_used()
        => Assert.Empty(Found("bin b1 60 L in extract, 450 x 450, against north wall, 3000 from west", "waste 0.1 kg each to b1"));

    [Fact]
    public void Nothing_is_said_before_any_flow_is_drawn()
        => Assert.Empty(Found("bin b1 60 L in extract, 450 x 450, against north wall, 3000 from west", flow: ""));

    private static IReadOnlyList<Finding> Found(
        string thing, string detail = "worker south", string flow = "flow product\n  outside -> d1 -> uncap   by hand")
        => CheckedPlan.Check($"""
        plan "Honey room"
          units metric
        shell shed 6000 x 3000 x 2500
        room extract "Extracting" clean from west to 4500
        room store "Store" dry from 4500 to east
        partitions thickness 80
        door d1 extract to outside, south wall, 500 from west, 900 x 2050, swings out
        station uncap "Uncapping bench" in extract
          size 1200 x 600 x 900
          place against north wall, 500 from west
          {detail}
        {thing}
        {flow}
        """, "unused");
}
