using Floorplan.Drawing.Scene;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>Sheet 3 draws the reach of the people whom the plan is for; thumb-tip reach by ANSUR II, see BodyTableTests.</summary>
public sealed class ReachArcTests
{
    /// <summary>The rule then judges by the plan's own figure alone; sheet 3 drew the arc of a tall person beside it.</summary>
    [Fact]
    public void A_reach_that_the_plan_sets_is_the_only_arc()
    {
        var pages = DrawnPlans.Draw("""
            plan "Arcs"
              units metric
            shell container 20 ft high-cube
            room cut "Cutting" clean from west to east
            door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
            station bench "Trim bench" in cut
              size   1800 x 600 x 900
              place  against north wall, 2500 from west
              worker south
            limit out-of-reach 700 mm "tall crew"
            """, [3]);

        Assert.Single(pages.Items<ArcItem>(), a => a.Group == "reach:bench:1");
        Assert.Contains(pages.Texts(), t => t.Text == "reach set in this plan, 700 mm");
        Assert.DoesNotContain(pages.Texts(), t => t.Text.StartsWith("reach of a", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", 674, 886)]
    [InlineData("people women", 674, 816)]
    [InlineData("people men", 742, 886)]
    [InlineData("people 10 to 90 %", 691, 868)]
    public void Arcs_and_their_key_follow_the_people_of_the_plan(string people, double small, double tall)
    {
        var pages = DrawnPlans.Draw($"""
            plan "Arcs"
              units metric
              {people}
            shell container 20 ft high-cube
            room cut "Cutting" clean from west to east
            door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
            station bench "Trim bench" in cut
              size   1800 x 600 x 900
              place  against north wall, 2500 from west
              worker south
            """, [3]);

        var radii = pages.Items<ArcItem>().Where(a => a.Group == "reach:bench:1").Select(a => a.Radius).ToList();
        var key = pages.Texts().Where(t => t.Text.StartsWith("reach of a", StringComparison.Ordinal)).Select(t => t.Text);

        Assert.Equal(2, radii.Count);
        Assert.Equal(tall / small, radii[1] / radii[0], 1e-6);
        Assert.Equal([$"reach of a small person, {small} mm", $"reach of a tall person, {tall} mm"], key);
    }
}
