using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.File;

public sealed class UnreachableTests
{
    [Fact]
    public void A_room_without_a_door_is_one_mistake_however_many_work_in_it()
    {
        var finding = Assert.Single(Found("""
            station table in pack
              size 900 x 600 x 900
              place against north wall, 300 from west
              worker south
            station scale in pack
              size 900 x 600 x 900
              place against north wall, 2000 from west
              worker south
            flow product
              table -> scale   by hand
            """));

        Assert.Equal(["pack", "table", "scale"], finding.Things);
        Assert.Equal(Severity.Error, finding.Severity);
    }

    [Fact]
    public void A_trolley_that_does_not_pass_a_door_is_told_with_both_widths()
    {
        var finding = Assert.Single(Found("""
            door d2 wash to pack, 300 from south, 700 x 2050, swings pack, closes itself
            station table in pack
              size 900 x 600 x 900
              place against north wall, 1500 from west
              worker south
            flow supplies
              outside -> d1 -> d2 -> table   by trolley 800 wide
            """));

        Assert.Contains("800 mm", finding.Message);
        Assert.Contains("d2", finding.Message);
        Assert.Contains("700 mm", finding.Message);
    }

    [Fact]
    public void A_worker_behind_a_row_of_benches_is_found()
    {
        var finding = Assert.Single(Found("""
            door d2 wash to pack, 300 from south, 900 x 2050, swings wash, closes itself
            station row in pack
              size 600 x 2700 x 900
              place 1500 from west, against south wall
            station table in pack
              size 600 x 900 x 900
              place against east wall, centred
              worker west
            station desk in pack
              size 600 x 900 x 900
              place against west wall, against north wall
              worker east
            """));

        Assert.Equal(["table"], finding.Things);
        Assert.StartsWith("nobody can walk from outside", finding.Message);
    }

    private static IReadOnlyList<Finding> Found(string more) => CheckedPlan.Check($"""
        plan "Mussel unit"
          units metric
        shell shed 9000 x 3000 x 2500
        room wash "Washing" dirty from west to 4000
        room pack "Packing" clean from 4000 to east
        partitions thickness 80
        door d1 wash to outside, south wall, 500 from west, 900 x 2050, swings out
        {more}
        """, "unreachable");
}
