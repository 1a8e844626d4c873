using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.File;

/// <summary>Statements about rules that change nothing: a wrong name, a wrong unit, nothing to accept.</summary>
public sealed class StatementWithoutEffectTests
{
    [Theory]
    [InlineData("limit door-blockd 500 mm \"agreed\"", "unknown-rule", "did you mean `door-blocked`?")]
    [InlineData("limit no-water-near 5 m \"agreed\"", "unknown-rule", "this rule is now called `water-too-far`: write that")]
    [InlineData("accept no-light at tank \"agreed\"", "unknown-rule", "this rule is now called `light-missing`: write that")]
    [InlineData("accept overlapp at tank \"agreed\"", "unknown-rule", "did you mean `overlap`?")]
    [InlineData("limit overlap 500 mm \"agreed\"", "limit-does-not-fit", "write `accept overlap at … \"reason\"` for a single finding")]
    [InlineData(
        "limit door-blocked 20 % \"agreed\"", "limit-does-not-fit",
        "give a length, such as `600 mm`: it is the free floor in front of a doorway")]
    [InlineData(
        "limit room-too-small 20 % \"agreed\"", "limit-does-not-fit", "give a volume, such as `11 m3`: it is the room for each person")]
    [InlineData(
        "limit sterilizer-too-cool 20 % \"agreed\"", "limit-does-not-fit",
        "give a temperature, such as `82 C`: it is the water of a sterilizer")]
    [InlineData(
        "accept door-blocked at d2 \"agreed\"", "accepts-nothing",
        "door-blocked stands at d1 and tank; name these, or take the statement out")]
    [InlineData("accept overlap at tank \"agreed\"", "accepts-nothing", "take the statement out")]
    public void It_is_found_and_the_way_out_told(string statement, string rule, string mend)
        => Assert.Equal(mend, Assert.Single(Found(statement), f => f.Rule == rule).Mend);

    [Theory]
    [InlineData("limit door-blocked 300 mm \"agreed\"")]
    [InlineData("accept door-blocked at d1 \"agreed\"")]
    [InlineData("accept door-blocked \"agreed\"")]
    public void A_statement_that_works_is_not_found(string statement)
        => Assert.DoesNotContain(Found(statement), f => f.Rule is "unknown-rule" or "limit-does-not-fit" or "accepts-nothing");

    [Fact]
    public void Of_two_limits_for_one_rule_the_first_is_told_to_have_no_effect()
        => Assert.Single(
            Found("limit door-blocked 300 mm \"agreed\"\nlimit door-blocked 500 mm \"agreed later\""), f => f.Rule == "limit-does-not-fit");

    private static IReadOnlyList<Finding> Found(string statement) => CheckedPlan.Check($"""
        plan "Crab room"
          units metric
        shell shed 6000 x 3000 x 2500
        room boil "Boiling" dirty from west to east
        door d1 boil to outside, south wall, 1000 from west, 900 x 2050, swings out
        door d2 boil to outside, south wall, 4000 from west, 900 x 2050, swings out
        station tank "Holding tank" in boil
          size 1200 x 600 x 800
          place 900 from west, 400 from south
        {statement}
        """);
}
