using System.Globalization;
using System.Text;
using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Space;
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
        var finding =
            Assert.Single(Found("door d1 smoke to outside, south wall, 500 from west, 900 x 2050, swings out", "700 x 700 x 2200"));

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
    /// Through a wall t thick, W wide, a box w broad goes at no flatter angle than W sin a - t cos a = w while both jambs are beside
    /// it. Flatter, its end
    /// is inside, so that at that angle its length must lie behind the outer face: L sin a - t of depth. For w 600, W 900, t 100, L
    /// 2400 that is
    /// a = 48.0 degrees and 1682 mm; for a box 19 mm smaller on every side, which is the tolerance of the search, 1561 mm.
    /// </summary>
    [Theory]
    [InlineData(1700, 0)]
    [InlineData(1550, 1)]
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
            """, "will-not-go-in")
            .Count(f => f.Severity == Severity.Error && f.Message.Contains("leaves room to turn it", StringComparison.Ordinal)));

    /// <summary>
    /// The disc of its small side rolls round the corner; the table itself does not: 2 (1000 sqrt 2 - 700) = 1428 goes round by the
    /// textbook.
    /// </summary>
    [Theory]
    [InlineData(1400, 0)]
    [InlineData(2400, 1)]
    public void A_long_table_does_not_turn_round_a_corner_between_rooms(int length, int findings)
        => Assert.Equal(findings, CheckedPlan.Check($"""
            plan "Corner"
              units metric
            shell shed 6280 x 4280 x 2500
            room hall "Hall" clean from west to east
            room cell "Cell" staff area 5000 x 3000, in hall, at 0, 1080
            partitions thickness 80
            door d1 hall to outside, north wall, 50 from east, 900 x 2050, swings out
            door d2 cell to outside, west wall, 300 from south, 700 x 2000, swings out
            station table "Long table" in hall
              size {length} x 700 x 850
              place against south wall, 100 from west
            """, "will-not-go-in").Count);

    [Fact]
    public void The_finding_names_the_partition_that_is_enough_to_leave_open()
    {
        var finding = Assert.Single(CheckedPlan.Check(BehindPartition, "will-not-go-in"));

        Assert.Contains("before the wall at door d2 is closed", finding.Mend);
    }

    [Fact]
    public void A_round_tank_needs_no_turning()
        => Assert.Empty(CheckedPlan.Check("""
            plan "Smoke house"
              units metric
            shell shed 6000 x 3000 x 2500
            room smoke "Smoking" clean from west to east
            door d1 smoke to outside, south wall, 500 from west, 1200 x 2050, swings out
            station kiln "Smoking kiln" in smoke
              round 1200 x 2000
              place against north wall, 3000 from west
            """, "will-not-go-in"));

    /// <summary>
    /// A table as long as its room, which comes in straight by the front but does not turn through the door of the partition.
    /// </summary>
    internal const string BehindPartition = """
        plan "Two rooms"
          units metric
        shell shed 4200 x 2900 x 2500
        room front "Front" clean from south to 1500
        room back "Back" clean from 1500 to north
        door d1 front to outside, west wall, 300 from south, 900 x 2050, swings out
        door d2 front to back, 2500 from west, 900 x 2050, swings back
        station table "Long table" in back
          size 3000 x 700 x 1100
          place against north wall, 200 from west

        """;

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

    /// <summary>Counted, not timed: each bench used to be searched a way for, over all the floor, and 900 of them took minutes.</summary>
    [Fact]
    public void What_no_door_leads_to_is_told_without_a_search()
    {
        var text = new StringBuilder("plan \"T\"\nshell shed 40000 x 20000 x 2600\nroom a \"Hall\" dirty from west to east\n");
        for (int i = 0; i < 200; i++)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"station s{i} \"Bench {i}\" in a\n  size 500 x 400 x 900\n  place at {500 + (i % 40 * 900)}, {500 + (i / 40 * 900)}\n");
        }

        var facts = CheckedPlan.Facts(CheckedPlan.Plan(text.ToString()));
        long before = Steps.Taken;
        Assert.Equal(200, facts.BringingIn.Stuck.Count);
        Assert.InRange(Steps.Taken - before, 0, 4_000_000);
    }
}
