using Floorplan.Checks.Framework;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Framework;

public sealed class RuleResultTests
{
    /// <summary>A 40 ft box is held against 3 t on a metre, so the report names that and not the 4 t of a 20 ft box.</summary>
    [Theory]
    [InlineData("poultry-40ft.unit", 3000)]
    [InlineData("fish-20ft.unit", 4000)]
    public void A_report_names_the_figure_that_the_plan_was_held_against(string template, double kilograms)
    {
        var plan = CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", template)));
        var result = Assert.Single(RuleResult.Of(plan, CheckedPlan.Check(plan)), r => r.Rule.Name == "floor-overloaded");
        Assert.Equal(kilograms, result.Limit!.Value);
    }

    [Theory]
    [InlineData("goat-dairy-shed.unit", false)]
    [InlineData("game-trailer.unit", true)]
    public void A_report_lists_the_rules_of_trailers_for_trailers_alone(string template, bool listed)
    {
        var plan = CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", template)));
        var names = RuleResult.Of(plan, CheckedPlan.Check(plan)).Select(r => r.Rule.Name).ToList();

        Assert.All(new[] { "hitch-load", "axle-overloaded", "too-wide-for-road" }, name => Assert.Equal(listed, names.Contains(name)));
        Assert.All(new[] { "floor-overloaded" }, name => Assert.DoesNotContain(name, names));
        Assert.Contains("overlap", names);
        Assert.DoesNotContain("unused", names);
    }

    /// <summary>A `limit` whose unit does not fit sets nothing, so a 40 ft box is still held against 3 t.</summary>
    [Fact]
    public void A_limit_that_does_not_fit_leaves_the_figure_of_the_box()
    {
        var plan = CheckedPlan.Plan(
            File.ReadAllText(Repository.At("templates", "poultry-40ft.unit")) + "\nlimit floor-overloaded 300 mm \"a slip\"\n");
        var result = Assert.Single(RuleResult.Of(plan, CheckedPlan.Check(plan)), r => r.Rule.Name == "floor-overloaded");
        Assert.Equal(3000, result.Limit!.Value);
    }
}
