using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.WaterAndDrain;

/// <summary>
/// Food Code 2022, 5-202.12(A) (secondary copy); Regulation (EC) 852/2004, Annex II, chapter I(4) (from memory): hot and cold water at
/// hand sinks.
/// </summary>
public sealed class SinkNotServedTests
{
    private const string Sinks = """
        sink s1 hand in lobby, 400 x 350, corner north-west
        sink s2 hand in work, 400 x 350, corner north-east
        """;

    [Theory]
    [InlineData("water w1 cold hot in work, north wall, 2000 from west, height 1200", 0)]
    [InlineData("water w1 cold in work, north wall, 2000 from west, height 1200", 1)]
    [InlineData("water w1 hot in work, north wall, 2000 from west, height 1200", 1)]
    [InlineData(
        "water w1 cold in work, north wall, 2000 from west, height 1200\nwater w2 hot in lobby, south wall, 500 from west, height 1200", 1)]
    [InlineData(
        "water w1 cold hot in work, north wall, 2000 from west, height 1200\nwater w2 cold in work, south wall, 500 from "
            + "west, height 1200", 0)]
    [InlineData("", 0)]
    public void A_room_with_water_points_wants_a_hot_one_and_a_plan_without_points_is_not_looked_at(string water, int findings)
        => Assert.Equal(
            findings,
            CheckedPlan.Check(Unit($"{Sinks}\n{water}\ndrain fd1 floor in work, 3000 from west, centred, 100"), "sink-not-served").Count);

    [Fact]
    public void All_sinks_without_hot_water_are_one_mistake_and_its_line_mends_it()
    {
        string plan =
            Unit(Sinks
                + "\nwater w1 cold in work, north wall, 2000 from west, height 1200\ndrain fd1 floor in work, 3000 from west, centred, "
                + "100");
        var finding = Assert.Single(CheckedPlan.Check(plan, "sink-not-served"));
        Assert.Equal("no water point gives hot water for hand sinks s1 and s2", finding.Message);
        Assert.Empty(CheckedPlan.Check(plan + "\n" + finding.NewLine, "sink-not-served"));
    }

    [Fact]
    public void A_unit_with_water_and_sinks_needs_a_drain_and_the_line_mends_it()
    {
        string plan = Unit(Sinks + "\nwater w1 cold hot in work, north wall, 2000 from west, height 1200")
            .Replace("clean", "dry", StringComparison.Ordinal);
        var finding = Assert.Single(CheckedPlan.Check(plan, "sink-not-served"));
        Assert.Equal("no drain of the plan takes the waste of hand sinks s1 and s2", finding.Message);
        Assert.Empty(CheckedPlan.Check(plan + "\n" + finding.NewLine, "sink-not-served"));
    }

    /// <summary>One thing lacks, and is told once: at the station that asks for it.</summary>
    [Fact]
    public void A_plan_without_hot_water_that_a_station_asks_for_is_one_mistake()
        => Assert.Equal(["water-too-far"], CheckedPlan.Check(Unit(Sinks + """

            water w1 cold in work, north wall, 2000 from west, height 1200
            drain fd1 floor in work, 3000 from west, centred, 100
            station tank "Tank" in work
              size 900 x 600 x 850
              place against south wall, 2500 from west
              needs hot 4 L/min
            """)).Select(f => f.Rule).Where(r => r is "water-too-far" or "sink-not-served"));

    [Theory]
    [InlineData("sink s1 wash in lobby, 400 x 350, corner north-west")]
    [InlineData("sink s1 hand in lobby\n  size 400 x 350 x 900\n  place corner north-west\n  needs hot 4 L/min")]
    public void Other_sinks_and_sinks_that_say_what_they_need_are_left_to_other_rules(string sink)
        => Assert.Empty(
            CheckedPlan.Check(
                Unit(sink
                    + "\nwater w1 cold in work, north wall, 2000 from west, height 1200\ndrain fd1 floor in work, 3000 from west, "
                    + "centred, 100"), "sink-not-served"));

    private static string Unit(string more) => $"""
        plan "Lobby"
          units metric
        shell shed 8000 x 3000 x 2800
        room lobby "Lobby" staff from west to 2000
        room work "Work" clean from 2000 to east
        door d1 lobby to outside, west wall, centred, 900 x 2050, swings out
        door d2 lobby to work, centred, 900 x 2050, swings work, closes itself
        {more}
        """;
}
