using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class SuppliesThroughDirtyTests
{
    [Fact]
    public void Cartons_through_the_gutting_room_are_found()
        => Assert.Contains(
            "Cartons for Packing table (table) in Packing (pack) come through Gutting (gut)",
            Assert.Single(Found("outside -> d1 -> d3 -> table by hand")).Message);

    [Fact]
    public void Cartons_kept_in_the_gutting_room_are_found()
        => Assert.Single(Found("bench -> d3 -> table by hand"));

    [Fact]
    public void Before_work_the_gutting_room_is_clean() => Assert.Empty(Found("outside -> d1 -> d3 -> table by hand, before work"));

    [Fact]
    public void What_the_dirty_room_itself_needs_may_come_there() => Assert.Empty(Found("outside -> d1 -> bench by hand"));

    [Fact]
    public void A_pipe_may_pass_the_dirty_room() => Assert.Empty(Found("outside -> d1 -> d3 -> table by pump"));

    private static IReadOnlyList<Finding> Found(string way) => CheckedPlan.Check($"""
        plan "Tench unit"
          units metric
        shell shed 9000 x 3000 x 2500
        room gut "Gutting" dirty from west to 4000
        room pack "Packing" clean from 4000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out
        door d3 gut to pack, 300 from south, 900 x 2050, swings pack, closes itself
        station bench "Gutting bench" in gut, 1200 x 600 x 900, against north wall, 1500 from west, worker south
        station table "Packing table" in pack, 1500 x 600 x 900, against north wall, 1500 from west, worker south
        flow supplies "Cartons"
          {way}
        """, "supplies-through-dirty");
}
