using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.RoomAndPlace;

public sealed class ClearSpaceBlockedTests
{
    [Fact]
    public void A_thing_on_wheels_may_stand_in_a_clear_space() => Assert.Empty(Found("""
        station cart in brine
          size 600 x 500 x 900
          place 1600 from west, 1400 from south
          on wheels
        """, 1200));

    [Fact]
    public void A_thing_hung_above_head_height_does_not_block() => Assert.Empty(Found("""
        station hood in brine
          size 600 x 500 x 300
          place 1600 from west, 1400 from south
          hung, underside 2000
        """, 1200));

    /// <summary>3200 mm of shed less two walls of 100 mm and 800 mm of kettle leave 2200 mm.</summary>
    [Fact]
    public void A_wall_nearer_than_the_clear_depth_blocks_it()
    {
        var finding = Assert.Single(Found("", 2500));

        Assert.Equal(
            "a wall stands in the clear space south of Brine kettle (kettle) for tipping: 2200 mm of 2500 mm is free", finding.Message);
        Assert.Equal(2200, finding.Measured!.Value, 3);
        Assert.Equal(2500, finding.LimitValue!.Value, 3);
    }

    [Fact]
    public void A_clear_depth_up_to_the_wall_is_free() => Assert.Empty(Found("", 2200));

    private static IReadOnlyList<Finding> Found(string more, int depth) => CheckedPlan.Check($"""
        plan "Brine room"
          units metric
        shell shed 5000 x 3200 x 2500
        room brine "Brining" clean from west to east
        door d1 brine to outside, south wall, 300 from west, 900 x 2050, swings out
        station kettle "Brine kettle" in brine
          size 800 x 800 x 1000
          place against north wall, 1500 from west
          clear south {depth} "tipping"
        {more}
        """, "clear-space-blocked");
}
