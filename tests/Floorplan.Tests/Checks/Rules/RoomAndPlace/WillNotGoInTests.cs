using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.RoomAndPlace;

public sealed class WillNotGoInTests
{
    [Theory]
    [InlineData("1400 x 900 x 2000", 0)]
    [InlineData("900 x 1400 x 2000", 0)]
    [InlineData("1400 x 910 x 2000", 1)]
    [InlineData("900 x 900 x 2050", 0)]
    public void A_thing_goes_in_narrow_side_first(string size, int findings)
        => Assert.Equal(findings, Found("door d1 smoke to outside, south wall, 500 from west, 900 x 2050, swings out", size).Count);

    [Fact]
    public void A_thing_that_passes_only_lying_down_is_a_warning()
    {
        var finding = Assert.Single(Found("door d1 smoke to outside, south wall, 500 from west, 900 x 2050, swings out", "700 x 700 x 2200"));

        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains("goes in only tipped onto its side", finding.Message);
    }

    [Fact]
    public void Cargo_doors_count_as_a_way_in() => Assert.Empty(CheckedPlan.Check("""
        plan "Smoke box"
          units metric
        shell container 20 ft high-cube
          doors west
        room smoke "Smoking" clean from west to east
        door d1 smoke to outside, south wall, 1500 from west, 900 x 2000, swings out
        station kiln "Smoking kiln" in smoke
          size 2000 x 2000 x 2000
          place against east wall, against north wall
        """, "will-not-go-in"));

    [Fact]
    public void The_narrowest_door_on_the_way_decides()
    {
        var finding = Assert.Single(CheckedPlan.Check("""
            plan "Smoke house"
              units metric
            shell shed 9000 x 3000 x 2500
            room front "Front" clean from west to 4000
            room back "Back" clean from 4000 to east
            partitions thickness 80
            door d1 front to outside, south wall, 500 from west, 1400 x 2100, swings out
            door d2 front to back, 500 from south, 800 x 2050, swings back
            station kiln "Smoking kiln" in back
              size 1200 x 1000 x 1900
              place against north wall, 3000 from west
            """, "will-not-go-in"));

        Assert.Equal(["kiln", "d2"], finding.Things);
        Assert.Contains("door d2, 800 mm wide and 2050 mm high", finding.Message);
    }

    /// <summary>
    /// Through a thin wall a box of breadth w goes at sin a = w / W to the wall and needs L sin a + w cos a of depth behind
    /// it: w 600, W 900, L 2400 gives a = 41.8 degrees and 2047 mm; with the wall's 100 mm, W sin a - 100 cos a = w gives 48 degrees and 2180 mm.
    /// </summary>
    [Theory]
    [InlineData(2300, 0)]
    [InlineData(2000, 1)]
    public void A_long_thing_must_turn_in_the_passage_behind_the_door(int passage, int findings)
        => Assert.Equal(findings, CheckedPlan.Check($"""
            plan "Passage"
              units metric
            shell shed 9000 x {passage + 200} x 2500
            room hall "Hall" clean from west to east
            door d1 hall to outside, south wall, 4000 from west, 900 x 2050, swings out
            station table "Long table" in hall
              size 2400 x 600 x 1000
              place against north wall, 200 from west
            """, "will-not-go-in").Count(f => f.Severity == Severity.Error && f.Message.Contains("leaves room to turn it", StringComparison.Ordinal)));

    [Fact]
    public void A_room_carved_out_can_leave_too_narrow_a_neck()
        => Assert.Single(CheckedPlan.Check("""
            plan "Neck"
              units metric
            shell shed 8000 x 2600 x 2500
            room hall "Hall" clean from west to east
            room cell "Cell" staff area 2000 x 1500, in hall, at 3000, 900
            partitions thickness 80
            door d1 hall to outside, west wall, 300 from south, 1400 x 2100, swings out
            door d2 cell to hall, west wall, 300 from south, 800 x 2000, swings hall, closes itself
            station tank "Cheese vat" in hall
              size 1200 x 1200 x 1000
              place against east wall, against north wall
            """, "will-not-go-in"));

    private static IReadOnlyList<Finding> Found(string door, string size) => CheckedPlan.Check($"""
        plan "Smoke house"
          units metric
        shell shed 6000 x 3000 x 2500
        room smoke "Smoking" clean from west to east
        {door}
        station kiln "Smoking kiln" in smoke
          size {size}
          place against north wall, 3000 from west
        """, "will-not-go-in");
}
