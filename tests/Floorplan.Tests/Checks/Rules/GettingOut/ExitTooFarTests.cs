using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.GettingOut;

public sealed class ExitTooFarTests
{
    /// <summary>NFPA 101, Table 40.2.5: 50 ft, an American figure from memory to be verified; 59 ft here.</summary>
    [Theory]
    [InlineData("us", 1)]
    [InlineData("eu", 0)]
    [InlineData("none", 0)]
    public void The_short_walk_is_advised_in_america_only(string code, int findings)
        => Assert.Equal(findings, CheckedPlan.Check(Shed(code, ""), "exit-too-far").Count);

    [Fact]
    public void A_second_exit_beside_the_first_takes_the_short_walk_away()
        => Assert.Empty(
            CheckedPlan.Check(Shed("us", "door d2 pack to outside, south wall, 300 from west, 900 x 2050, swings out"), "exit-too-far"));

    /// <summary>
    /// IBC 2018, 1006.2.1, group B: 100 ft (30.48 m) to the only exit of at most 30 people. An exit of the room behind the wall is none
    /// of this one; it was counted as one.
    /// </summary>
    [Fact]
    public void An_exit_that_only_another_room_has_does_not_count()
    {
        var finding = Assert.Single(CheckedPlan.Check("""
            plan "Two sheds under one roof"
              units metric
              code us
            shell shed 40 m x 4 m x 2.8 m
            room pack "Packing" dry from west to 34 m
            room store "Store" dry from 34 m to east
            door d1 pack to outside, west wall, centred, 900 x 2050, swings out
            door d2 store to outside, east wall, centred, 900 x 2050, swings out
            """, "exit-too-far"));

        Assert.Equal(30_480, finding.LimitValue);
        Assert.Contains("only one", finding.Message);
    }

    [Theory]
    [InlineData("")]
    [InlineData("door d2 pack to outside, south wall, 300 from west, 900 x 2050, swings out")]
    public void A_plans_own_limit_holds_with_one_exit_and_with_several(string door)
        => Assert.Equal(
            10_000, Assert.Single(
                CheckedPlan.Check(Shed("eu", door + "\nlimit exit-too-far 10 m \"the fire officer\""), "exit-too-far")).LimitValue);

    private static string Shed(string code, string more) => $"""
        plan "A long shed"
          units metric
          code {code}
        shell shed 18 m x 4 m x 2.8 m
        room pack "Packing" dry from west to east
        door d1 pack to outside, west wall, centred, 900 x 2050, swings out
        {more}
        """;
}
