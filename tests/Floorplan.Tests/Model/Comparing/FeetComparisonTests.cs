using Floorplan.Model.Comparing;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Model.Comparing;

/// <summary>What differs between two feet plans is told in feet.</summary>
public sealed class FeetComparisonTests
{
    public static TheoryData<string> Templates => [.. DrawnPlans.Templates.Where(t => t != "empty-start")];

    [Theory]
    [MemberData(nameof(Templates))]
    public void All_of_a_plan(string template)
    {
        var empty = CheckedPlan.Plan(InFeet.Of(DrawnPlans.Text("empty-start")));
        var plan = CheckedPlan.Plan(InFeet.Of(DrawnPlans.Text(template)));
        var lines = PlanComparison.Of(empty, plan).Changes.Concat(PlanComparison.Of(plan, empty).Changes).Select(c => c.Text).ToList();
        Assert.True(lines.Count > 20, $"only {lines.Count} lines");
        Assert.DoesNotContain(lines, l => MetricFigures.In(l).Count > 0);
    }
}
