using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class UnwashedEntryTests
{
    [Fact]
    public void A_sink_in_the_lobby_is_passed_even_when_not_named()
        => Assert.Empty(Found("sink s1 hand in lobby, 400 x 350, against north wall, 600 from west", "outside -> d1 -> d2 -> vat"));

    [Fact]
    public void A_sink_just_inside_the_door_is_enough_when_it_comes_first()
        => Assert.Empty(Found("sink s1 hand in make, 400 x 350, against north wall, 100 from west", "outside -> d1 -> d2 -> s1 -> vat"));

    [Fact]
    public void A_sink_used_only_after_the_vat_is_too_late()
        => Assert.Equal(
            Severity.Warning,
            Assert.Single(
                Found("sink s1 hand in make, 400 x 350, against north wall, 100 from west", "outside -> d1 -> d2 -> vat -> s1")).Severity);

    [Fact]
    public void Washed_but_not_changed_is_a_note()
    {
        var finding =
            Assert.Single(Found("sink s1 hand in make, 400 x 350, against north wall, 100 from west", "outside -> d3 -> s1 -> vat"));

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Contains("without a staff room to change boots and coat in", finding.Message);
    }

    [Fact]
    public void Going_out_again_means_washing_again()
        => Assert.Single(
            Found(
                "sink s1 hand in lobby, 400 x 350, against north wall, 600 from west",
                "outside -> d1 -> s1 -> d2 -> vat -> d3 -> outside -> d3 -> vat"));

    [Fact]
    public void Without_a_people_flow_the_way_through_the_fewest_rooms_is_a_note()
    {
        var finding = Assert.Single(Found("", null));

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.StartsWith("by the way in through the fewest rooms", finding.Message);
    }

    [Fact]
    public void Without_a_people_flow_a_sink_in_the_room_is_enough()
        => Assert.Empty(Found("sink s1 hand in make, 400 x 350, against north wall, 100 from west", null));

    private static IReadOnlyList<Finding> Found(string sink, string? way) => CheckedPlan.Check($"""
        plan "Cheese hut"
          units metric
        shell shed 8000 x 3000 x 2500
        room lobby "Change" staff from west to 2000
        room make "Cheese room" clean from 2000 to east
        partitions thickness 80
        door d1 lobby to outside, west wall, 1000 from south, 900 x 2050, swings out
        door d2 lobby to make, 1000 from south, 900 x 2050, swings lobby, closes itself
        door d3 make to outside, east wall, 1000 from south, 900 x 2050, swings out
        {sink}
        station vat "Cheese vat" in make
          size 1500 x 900 x 900
          place against north wall, 2000 from west
          worker south
        {(way is null ? "" : "flow people\n  " + way)}
        """, "unwashed-entry");
}
