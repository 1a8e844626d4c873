using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Staffing;

public sealed class CrewTests
{
    /// <summary>
    /// 14 people in a room and 2 at its bench: <c>toilets-too-few</c> counted 16 and <c>room-too-small</c> 14. All count 16 now. 20 x 8 x
    /// 2.7 m less the walls are some 410 m³: 29 m³ for each of 14, under the plan's own 28 m³ for each of 16.
    /// </summary>
    [Fact]
    public void All_rules_count_the_same_people()
    {
        string plan = Shed("pack 14, bench 2") + "\nlimit room-too-small 28 m3 \"a wish\"";
        var crew = CheckedPlan.Facts(CheckedPlan.Plan(plan)).Crew;

        Assert.Equal(16, crew.All.Value);
        Assert.Equal(16, crew.Said["pack"].Value);
        Assert.Contains("crew of 16", Assert.Single(CheckedPlan.Check(plan, "toilets-too-few")).Message);
        Assert.Contains("each of 16 people", Assert.Single(CheckedPlan.Check(plan, "room-too-small")).Message);
    }

    [Theory]
    [InlineData("pack 3, bench 5", 8, 8)]
    [InlineData("bench 5", 5, 5)]
    [InlineData("pack 1", 1, 1)]
    public void Numbers_of_a_room_and_of_its_stations_are_added(string said, int crew, int working)
    {
        var facts = CheckedPlan.Facts(CheckedPlan.Plan(Shed(said)));

        Assert.Equal((crew, working), ((int)facts.Crew.All.Value, (int)facts.Crew.Working["pack"].Value));
    }

    [Fact]
    public void Where_the_plan_says_nobody_the_places_to_stand_count_as_people_in_the_room_only()
    {
        var facts = CheckedPlan.Facts(CheckedPlan.Plan(Shed(null)));

        Assert.Equal((0, 2), ((int)facts.Crew.All.Value, (int)facts.Crew.Working["pack"].Value));
    }

    private static string Shed(string? crew) => $"""
        plan "Pack shed"
          units metric
          code us
        shell shed 20000 x 8000 x 2700
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 500 from west, 1000 x 2050, swings out, closes itself, opens from inside
        station bench "Packing bench" in pack
          size 1800 x 700 x 900
          place against north wall, centred
          workers 2 south, 800 apart
        {(crew is null ? "" : $"day\n  crew {crew}\n  elsewhere 1 toilet, changing room")}
        """;
}
