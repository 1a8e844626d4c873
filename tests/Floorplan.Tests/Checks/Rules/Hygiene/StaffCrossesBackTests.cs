using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class StaffCrossesBackTests
{
    [Fact]
    public void Washed_between_it_is_one_finding_and_not_one_of_the_missing_change_too()
    {
        var finding = Assert.Single(Found("outside -> d2 -> s1 -> d3 -> table -> tank -> s2 -> table"));

        Assert.Equal(("staff-crosses-back", Severity.Warning), (finding.Rule, finding.Severity));
        Assert.Contains("through Gutting (gut) and on to Packing (pack)", finding.Message);
    }

    [Fact]
    public void Unwashed_it_is_the_finding_of_unwashed_entry_alone()
        => Assert.Equal("unwashed-entry", Assert.Single(Found("outside -> d2 -> s1 -> d3 -> table -> tank -> table", "")).Rule);

    [Fact]
    public void Through_the_dirty_room_to_the_toilet_is_found()
        => Assert.Equal("staff-crosses-back", Assert.Single(Found("outside -> d2 -> s1 -> d3 -> table -> d4 -> d5 -> wc")).Rule);

    [Fact]
    public void Going_home_through_the_dirty_room_is_no_way_back()
        => Assert.Empty(Found("outside -> d2 -> s1 -> d3 -> table -> d4 -> d1 -> outside"));

    [Fact]
    public void After_work_who_cleans_may_go_everywhere()
        => Assert.DoesNotContain(
            Found("outside -> d2 -> s1 -> d3 -> table -> tank -> s2 -> table, after work"), f => f.Rule == "staff-crosses-back");

    [Fact]
    public void Another_line_of_the_flow_is_another_person()
        => Assert.DoesNotContain(
            Found("outside -> d2 -> s1 -> d3 -> table\n  outside -> d1 -> tank -> d4 -> table"), f => f.Rule == "staff-crosses-back");

    [Fact]
    public void A_line_that_goes_on_is_the_same_person()
        => Assert.Single(
            Found("outside -> d2 -> s1 -> d3 -> table\n  table -> d4 -> tank\n  tank -> table"), f => f.Rule == "staff-crosses-back");

    private static IReadOnlyList<Finding> Found(
        string way, string sink = "sink s2 hand in gut, 400 x 350, against north wall, 3000 from west") => [.. CheckedPlan.Check($"""
        plan "Trout hut"
          units metric
        shell shed 12000 x 4500 x 2500
        room gut   "Gutting" dirty from west to 4000
        room pack  "Packing" clean from 4000 to 9000
        room lobby "Change"  staff from 9000 to east
        room wc    "Toilet"  toilet area 1200 x 1500, in gut, corner north-west
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out
        door d2 lobby to outside, east wall, 1000 from south, 900 x 2050, swings out
        door d3 pack to lobby, 1000 from south, 900 x 2050, swings lobby, closes itself
        door d4 gut to pack, 1000 from south, 900 x 2050, swings gut, closes itself
        door d5 wc to gut, south wall, 150 from west, 900 x 2050, swings wc, closes itself
        sink s1 hand in lobby, 400 x 350, against north wall, 600 from west
        {sink}
        station tank "Fish tank" in gut
          size 1200 x 600 x 900
          place against north wall, 1600 from west
          worker south
        station table "Packing table" in pack
          size 1500 x 600 x 900
          place against north wall, 1500 from west
          worker south
        flow people "Packer"
          {way}
        """).Where(f => f.Rule is "staff-crosses-back" or "unwashed-entry")];
}
