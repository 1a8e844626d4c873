using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.GettingOut;

/// <summary>
/// IBC 2018, 1011.5 (secondary copy): a riser at most 7 in. 29 CFR 1910.28(b)(1) and (11) (secondary copies): a guard at a drop of 4 ft or
/// more, stair rails from 4 risers on.
/// </summary>
public sealed class StepAtDoorTests
{
    [Theory]
    [InlineData("  ground 4 ft below floor", "steps 6", true)]
    [InlineData("  ground 4 ft below floor", "steps 7, guard", false)]
    [InlineData("  ground 4 ft below floor", "steps 6, guard", true)]
    [InlineData("  ground 4 ft below floor", "ramp", true)]
    [InlineData("  ground 3 ft 11 in below floor", "steps 7, guard", false)]
    [InlineData("  ground 3 ft below floor", "steps 6", true)]
    [InlineData("  ground 20 in below floor", "steps 3", false)]
    [InlineData("  ground 3 ft below floor", "ramp", false)]
    [InlineData("  ground 5 ft below floor", "guard", false)]
    [InlineData("  ground 3 ft below floor", "steps 3", true)]
    [InlineData("  ground 3 ft below floor", "steps 3, guard", true)]
    public void Steps_are_low_and_a_high_edge_is_guarded(string ground, string door, bool found)
        => Assert.Equal(found, Found(ground, ", " + door).Count == 1);

    [Fact]
    public void Nothing_is_said_where_the_plan_gives_no_ground() => Assert.Empty(Found("", ""));

    [Fact]
    public void The_steps_that_it_asks_for_are_enough()
    {
        const string ground = "  ground 32 in below floor";
        var finding = Assert.Single(Found(ground, ""));

        Assert.Contains("`steps 5`", finding.Mend);
        Assert.Contains("6 7/16\" high each", finding.Mend);
        Assert.Empty(Found(ground, ", steps 5, guard"));
    }

    private static IReadOnlyList<Finding> Found(string ground, string door) => CheckedPlan.Check($"""
        plan "On blocks"
          units feet
          code us
        shell container 20 ft high-cube
        {ground}
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 2' from west, 36 x 80, swings out{door}
        """, "step-at-door");
}
