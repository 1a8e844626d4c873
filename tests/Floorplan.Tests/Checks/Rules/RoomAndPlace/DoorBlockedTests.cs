using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.RoomAndPlace;

public sealed class DoorBlockedTests
{
    [Fact]
    public void A_leaf_that_hits_a_bench_cannot_open()
    {
        var finding = Assert.Single(Found("""
            door d1 boil to outside, south wall, 1000 from west, 900 x 2050, swings boil
            station tank "Holding tank" in boil
              size 1200 x 600 x 800
              place 900 from west, 400 from south
            """));

        Assert.Equal("the leaf of door d1 hits Holding tank (tank)", finding.Message);
        Assert.Equal(Severity.Error, finding.Severity);
    }

    [Fact]
    public void Two_leaves_that_meet_are_one_finding()
    {
        var finding = Assert.Single(Found("""
            door d1 boil to outside, south wall, 200 from west, 900 x 2050, swings boil, hinge east
            door d2 boil to outside, west wall, 200 from south, 900 x 2050, swings boil, hinge north
            """));

        Assert.Equal(["d1", "d2"], finding.Things);
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void A_leaf_that_sweeps_over_a_worker_is_a_warning()
    {
        var finding = Assert.Single(Found("""
            door d1 boil to outside, south wall, 1000 from west, 900 x 2050, swings boil
            station bench "Picking bench" in boil
              size 1200 x 600 x 900
              place 900 from west, 1300 from south
              worker south
            """));

        Assert.Equal("the leaf of door d1 sweeps over the place where worker 1 of Picking bench (bench) stands", finding.Message);
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void A_sliding_door_needs_no_room_to_swing() => Assert.Empty(Found("""
        door d1 boil to outside, south wall, 1000 from west, 900 x 2050, slides
        station bench "Picking bench" in boil
          size 1200 x 600 x 900
          place 900 from west, 1300 from south
          worker south
        """));

    [Fact]
    public void A_hatch_above_a_bench_is_not_blocked_by_it() => Assert.Empty(Found("""
        hatch h1 boil to outside, south wall, 1000 from west, 900 x 500, sill 1000
        station bench "Picking bench" in boil
          size 1200 x 600 x 900
          place against south wall, 900 from west
        """));

    /// <summary>ISO 14122-2: walkways at least 600 mm.</summary>
    [Theory]
    [InlineData(600, 0)]
    [InlineData(590, 1)]
    public void A_doorway_needs_free_floor_in_front(int from, int findings) => Assert.Equal(findings, Found($"""
        door d1 boil to outside, south wall, 1000 from west, 900 x 2050, swings out
        station tank "Holding tank" in boil
          size 1200 x 600 x 800
          place 900 from west, {from} from south
        """).Count);

    private static IReadOnlyList<Finding> Found(string more) => CheckedPlan.Check($"""
        plan "Crab room"
          units metric
        shell shed 6000 x 3000 x 2500
        room boil "Boiling" dirty from west to east
        {more}
        """, "door-blocked");
}
