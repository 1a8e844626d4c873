using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.RoomAndPlace;

public sealed class OverlapTests
{
    [Fact]
    public void Things_that_touch_do_not_overlap() => Assert.Empty(Found("""
        station scale in pack
          size 500 x 500 x 1100
          place against north wall, east of table
        """));

    [Fact]
    public void Things_hung_above_do_not_overlap() => Assert.Empty(Found("""
        station lamp in pack
          size 500 x 500 x 100
          place against north wall, 1200 from west
          hung, underside 2100
        """));

    [Fact]
    public void A_finding_says_how_far_to_move()
    {
        var finding = Assert.Single(Found("""
            station scale in pack
              size 500 x 500 x 1100
              place against north wall, 2300 from west
            """));

        Assert.Equal("scale and Packing table (table) overlap by 200 mm at the same height", finding.Message);
        Assert.Equal(200, finding.Measured);
    }

    [Fact]
    public void A_thing_in_a_partition_overlaps_it()
    {
        var finding = Assert.Single(Found("""
            station shelf in pack
              size 500 x 500 x 1100
              place against south wall, 3600 from west
            """));

        Assert.Contains("into the partition between pack and store", finding.Message);
        Assert.Equal(["shelf", "pack", "store"], finding.Things);
    }

    [Fact]
    public void A_conveyor_through_a_hatch_does_not_overlap_the_wall() => Assert.Empty(Found("""
        hatch h1 pack to store, 300 from south, 700 x 500, sill 800
        station belt in pack
          size 1500 x 400 x 150
          underside 850
          place 450 from south, 3200 from west
        """));

    private static IReadOnlyList<Finding> Found(string more) => CheckedPlan.Check($"""
        plan "Quail room"
          units metric
        shell shed 6000 x 3000 x 2500
        room pack "Packing" clean from west to 4000
        room store "Store" dry from 4000 to east
        partitions thickness 100
        door d1 pack to outside, south wall, 300 from west, 900 x 2050, swings out
        station table "Packing table" in pack
          size 1500 x 700 x 900
          place against north wall, 1000 from west
        {more}
        """, "overlap");

    /// <summary>Flush with one partition and in the other: what bench and wall share is a polygon and a line.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("door d1 a to s, east wall, 200 from north, 800 x 2050\n")]
    public void A_bench_in_the_corner_of_a_carved_room_is_as_far_in_the_wall_as_it_stands_in_it(string door)
    {
        string text = "plan \"T\"\nshell shed 8000 x 5000 x 2700\nroom a \"A\" clean from west to east\n"
            + "room s \"S\" dry\n  area 3000 x 2000\n  in a\n  place corner south-west\npartitions\n  thickness 60\n" + door
            + "station b \"Bench\" in s\n  size 1200 x 600 x 900\n  place 1850 from west, 1400 from south\n";
        var finding = Assert.Single(CheckedPlan.Check(text, "overlap"));
        Assert.Equal(50, finding.Measured!.Value, 3);
        Assert.Contains("50 mm into the partition", finding.Message);
    }
}
