using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.RoomAndPlace;

public sealed class HeadroomTests
{
    /// <summary>ISO 668: inside 2350 mm, or 2655 mm high-cube; less 50 floor and 50 ceiling. 29 CFR 1910.36(g)(1): 2286 mm.</summary>
    [Theory]
    [InlineData("standard", "us", 1)]
    [InlineData("high-cube", "us", 0)]
    [InlineData("standard", "eu", 0)]
    public void A_lined_container_keeps_or_loses_the_legal_ceiling(string height, string code, int findings)
        => Assert.Equal(findings, CheckedPlan.Check($"""
            plan "Clam box"
              units metric
              code {code}
            shell container 20 ft {height}
              lining walls 50, ceiling 50, floor 50
              doors west
            room shuck "Shucking" clean from west to east
            door d1 shuck to outside, south wall, 1500 from west, 900 x 2000, swings out
            """, "headroom").Count);

    /// <summary>29 CFR 1910.34(a) leaves out mobile workplaces.</summary>
    [Fact]
    public void In_a_trailer_the_figure_is_advice()
    {
        var finding = Assert.Single(CheckedPlan.Check("""
            plan "Game trailer"
              units feet
              code us
            shell trailer 20 ft x 8 ft x 7 ft
            room cut "Cutting" clean from west to east
            """, "headroom"));

        Assert.Equal(Severity.Note, finding.Severity);
    }

    [Fact]
    public void Several_rooms_under_one_low_ceiling_are_one_mistake()
    {
        var finding = Assert.Single(CheckedPlan.Check("""
            plan "Low shed"
              units metric
              code us
            shell shed 6000 x 3000 x 2200
            room a "A" clean from west to 3000
            room b "B" dry from 3000 to east
            partitions thickness 80
            """, "headroom"));

        Assert.Equal(["a", "b"], finding.Things);
        Assert.Equal(2200, finding.Measured);
    }

    /// <summary>29 CFR 1910.36(g)(1): 6 ft 8 in = 2032 mm under projections.</summary>
    [Theory]
    [InlineData(2000, 1)]
    [InlineData(2040, 0)]
    public void A_thing_hung_over_a_walk_needs_headroom(int underside, int findings)
        => Assert.Equal(findings, Hung($"""
            station hood "Hood" in one
              size 600 x 2000 x 200
              place 2500 from west, 500 from south
              hung, underside {underside}
            """).Count);

    [Fact]
    public void A_thing_hung_beside_every_walk_is_fine() => Assert.Empty(Hung("""
        station hood "Hood" in one
          size 600 x 300 x 200
          place 2500 from west, against south wall
          hung, underside 2000
        """));

    [Theory]
    [InlineData(1950, 1)]
    [InlineData(2100, 0)]
    public void A_rail_over_a_walk_needs_headroom(int height, int findings)
        => Assert.Equal(findings, Hung($"""
            rail r1 in one
              path 2500 300, 2500 2700
              height {height}
            """).Count);

    private static IReadOnlyList<Finding> Hung(string more) => CheckedPlan.Check($"""
        plan "Hanging shed"
          units metric
          code us
        shell shed 6000 x 3000 x 2600
        room one "One" clean from west to east
        door d1 one to outside, west wall, 1000 from south, 900 x 2050, swings out
        station bench "Bench" in one
          size 1500 x 600 x 900
          place against east wall, against north wall
          worker south
        flow people
          outside -> d1 -> bench
        {more}
        """, "headroom");
}
