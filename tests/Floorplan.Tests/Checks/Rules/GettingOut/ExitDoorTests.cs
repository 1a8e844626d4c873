using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.GettingOut;

/// <summary>IBC 2018, 1006.2.1 (secondary copy); 29 CFR 1910.36(g)(2), and 1910.34(a) (from memory), which leaves out vehicles.</summary>
public sealed class ExitDoorTests
{
    private const string Between = "door d3 a to b, centred, 900 x 2050, slides";

    /// <summary>Each half counts for fewer than 49 people, both together for more.</summary>
    [Theory]
    [InlineData("door d1 a to outside, west wall, centred, 900 x 2050, swings out\n" + Between, 1)]
    [InlineData(
        "door d1 a to outside, west wall, centred, 900 x 2050, swings out\ndoor d2 b to outside, east wall, centred, 900 x 2050, swings "
            + "out\n" + Between, 0)]
    [InlineData(
        "door d1 a to outside, west wall, centred, 900 x 2050, swings out\ndoor d2 b to outside, east wall, centred, 900 x 2050, swings "
            + "out", 0)]
    public void Rooms_that_people_walk_between_share_their_exits(string doors, int findings)
        => Assert.Equal(findings, CheckedPlan.Check($"""
        plan "Two halves"
          units metric
          code us
        shell shed 30 m x 20 m x 3 m
        room a dry from west to 15 m
        room b dry from 15 m to east
        {doors}
        """, "one-exit-only").Count);

    [Theory]
    [InlineData("shed 6000 x 2400 x 2500", Severity.Error)]
    [InlineData("trailer 6000 x 2400 x 2600", Severity.Warning)]
    public void The_law_on_ways_out_binds_a_building_and_advises_a_vehicle(string shell, Severity severity)
    {
        var finding = Assert.Single(CheckedPlan.Check($"""
            plan "Narrow door"
              units metric
              code us
            shell {shell}
            room a dry from west to east
            door d1 a to outside, south wall, 700 from west, 650 x 2050, swings out
            """, "exit-door-narrow"));

        Assert.Equal(severity, finding.Severity);
        Assert.Contains("813 mm wide", finding.Mend);
    }

    [Fact]
    public void A_door_between_rooms_is_no_exit() => Assert.Empty(CheckedPlan.Check("""
        plan "Inner door"
          units metric
          code us
        shell shed 6000 x 2400 x 2500
        room a dry from west to 3000
        room b dry from 3000 to east
        door d1 a to outside, south wall, 700 from west, 900 x 2050, swings out
        door d2 a to b, centred, 650 x 2050, slides
        """, "exit-door-narrow"));
}
