using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class RawReturnsCrossTests
{
    [Fact]
    public void Unwashed_crates_in_the_packing_room_are_found()
        => Assert.Contains(
            "Crates from outside to Packing table (table) come unwashed into Packing (pack)",
            Assert.Single(Found("outside -> d2 -> table by hand")).Message);

    [Fact]
    public void A_washing_place_just_inside_the_clean_room_is_enough_when_it_comes_first()
        => Assert.Empty(Found("outside -> d2 -> tub2 -> table by hand"));

    [Fact]
    public void A_hand_sink_washes_no_crates()
        => Assert.Single(Found("outside -> d2 -> s1 -> table by hand"));

    [Fact]
    public void Crates_that_stay_on_the_dirty_side_may_be_dirty()
        => Assert.Empty(Found("outside -> d1 -> bench by hand"));

    [Fact]
    public void Crates_that_leave_the_clean_room_are_clean()
        => Assert.Empty(Found("table -> d2 -> outside by hand"));

    [Fact]
    public void What_was_washed_and_used_again_is_dirty_again()
        => Assert.Single(Found("outside -> d1 -> tub -> bench -> h1 -> table by hand"));

    [Fact]
    public void After_work_the_room_is_washed_down_with_the_crates()
        => Assert.Empty(Found("outside -> d2 -> table by hand, after work"));

    [Fact]
    public void Unwashed_crates_on_the_way_of_packed_goods_are_found()
    {
        var finding = Assert.Single(Found("outside -> d3 -> d4 -> bench by hand"));

        Assert.Contains("clean product", finding.Message);
        Assert.Contains("at door d3", finding.Message);
    }

    [Fact]
    public void Packed_goods_and_crates_at_different_times_do_not_meet()
        => Assert.Empty(Found("outside -> d3 -> d4 -> bench by hand, before work"));

    private static IReadOnlyList<Finding> Found(string back) => CheckedPlan.Check($"""
        plan "Eel unit"
          units metric
        shell shed 13000 x 3000 x 2500
        room pack "Packing" clean from west to 4000
        room dry "Cartons" dry from 4000 to 7000
        room gut "Gutting" dirty from 7000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from east, 900 x 2050, swings out
        door d2 pack to outside, south wall, 500 from west, 900 x 2050, swings out
        door d3 dry to outside, south wall, centred, 900 x 2050, swings out
        door d4 dry to gut, 300 from south, 900 x 2050, swings gut, closes itself
        door d5 dry to pack, 300 from south, 900 x 2050, swings pack, closes itself
        hatch h1 dry to pack, 300 from north, 700 x 500, sill 950
        sink tub wash in gut, 900 x 600, against north wall, 200 from east
        sink tub2 wash in pack, 900 x 600, against north wall, 200 from west
        sink s1 hand in pack, 400 x 350, against west wall, 300 from south
        station bench "Gutting bench" in gut
          size 1500 x 600 x 900
          place against north wall, 1500 from west
          worker south
        station table "Packing table" in pack
          size 1500 x 600 x 900
          place against north wall, 1500 from west
          worker south
        flow product
          table -> d5 -> d3 -> outside by hand
        flow returns "Crates"
          {back}
        """, "raw-returns-cross");
}
