using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class WelfareTests
{
    [Fact]
    public void A_crew_without_toilet_and_change_is_told_of_both_once()
        => Assert.Equal(["changing-place-missing", "toilet-missing"], Found("crew make 2"));

    [Fact]
    public void A_sketch_without_a_crew_is_left_in_peace()
        => Assert.Empty(Found("breaks 30 min"));

    [Fact]
    public void What_is_elsewhere_on_the_site_counts()
        => Assert.Empty(Found("crew make 2\n  elsewhere 1 toilet, changing room"));

    [Fact]
    public void A_toilet_room_and_a_staff_room_count()
        => Assert.Empty(
            Found(
                "crew make 2",
                "room wc \"Toilet\" toilet area 1200 x 1500, in make, corner north-west\nroom lobby \"Change\" staff area 1200 x 1500, "
                    + "in make, corner south-west"));

    [Theory]
    [InlineData("us\n  plant inspected", "29 CFR 1910.141(c)(1)", "9 CFR 416.2(h)")]
    [InlineData("us\n  plant retail", "Food Code 2022, 5-203.12", "practice of the trade")]
    [InlineData("eu", "852/2004, Annex II, chapter I(3)", "852/2004 Annex II ch.III")]
    [InlineData("none", "practice of the trade", "practice of the trade")]
    public void Each_code_is_named_with_its_own_text(string code, string toilet, string change)
    {
        var all = CheckedPlan.Check(Plan("crew make 2", "", "").Replace("code us", "code " + code));

        Assert.Contains(toilet, all.Single(f => f.Rule == "toilet-missing").Limit);
        Assert.Contains(change, all.Single(f => f.Rule == "changing-place-missing").Limit);
    }

    [Fact]
    public void A_crew_at_a_station_works_in_its_room()
        => Assert.Contains("changing-place-missing", Found("crew vat 1"));

    [Fact]
    public void With_nowhere_to_change_the_way_in_is_not_told_of_again()
    {
        var all = CheckedPlan.Check(Plan("crew make 2\n  elsewhere 1 toilet", "", "flow people\n  outside -> d1 -> s1 -> vat"));

        Assert.Contains(all, f => f.Rule == "changing-place-missing");
        Assert.DoesNotContain(all, f => f.Rule == "unwashed-entry");
    }

    [Fact]
    public void Without_hands_washed_the_way_in_is_told_of_all_the_same()
        => Assert.Contains(
            CheckedPlan.Check(Plan("crew make 2\n  elsewhere 1 toilet", "", "flow people\n  outside -> d1 -> vat")), f
                => f.Rule == "unwashed-entry");

    [Theory]
    [InlineData("elsewhere 2")]
    [InlineData("elsewhere toilets")]
    [InlineData("elsewhere changing")]
    public void A_slip_in_what_is_elsewhere_is_told(string elsewhere)
        => Assert.Contains(CheckedPlan.Bind(Plan(elsewhere, "", "")).Diagnostics, d => d.Severity == Severity.Error);

    private static string[] Found(string day, string rooms = "") =>
        [.. CheckedPlan.Check(Plan(day, rooms, "")).Select(f => f.Rule)
            .Where(r => r is "changing-place-missing" or "toilet-missing" or "toilets-too-few").Order(StringComparer.Ordinal)];

    private static string Plan(string day, string rooms, string flow) => $"""
        plan "Cheese hut"
          units metric
          code us
        shell shed 8000 x 4500 x 2500
        room make "Cheese room" clean from west to east
        {rooms}
        door d1 make to outside, east wall, 1000 from south, 900 x 2050, swings out
        sink s1 hand in make, 400 x 350, against east wall, 2500 from south
        station vat "Cheese vat" in make
          size 1500 x 900 x 900
          place against north wall, 4000 from west
          worker south
        {flow}
        day
          {day}
        """;
}
