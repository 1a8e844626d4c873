using Floorplan.Language.Quantities;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Pages;

/// <summary>Plans are at a scale of the ruler, large enough to read, and the same on all sheets of a set.</summary>
public sealed class SetScaleTests
{
    /// <summary>A 40 ft container is 12.19 m long (ISO 668).</summary>
    private const double Longest = 12_200;

    /// <summary>With its rows and doors it fills an A3 sheet over the title block.</summary>
    private const double Deepest = 6000;

    public static TheoryData<string> Plans => [.. AllPlans.All];

    [Theory, MemberData(nameof(Plans))]
    public void Plan_views_of_a_set_have_one_scale_and_it_is_large_enough(string name)
    {
        var plan = DrawnPlans.Request(AllPlans.Text(name)).Plan;
        var views = DrawnPlans.Set(name).Where(p => p.Items.Any(i => i.Group == "wall:shell")).ToList();
        Assert.Superset(new HashSet<int> { 1, 2, 3, 4, 5 }, views.Select(v => v.Sheet).ToHashSet());
        double scale = Assert.Single(views.Select(v => v.Denominator).Distinct());
        bool metric = plan.Units == UnitSystem.Metric;
        Assert.Contains(scale, RulerScales.Of(plan.Units));
        var outside = plan.Shell.Outside.EnvelopeInternal;

        // A unit that is also deep is seen whole at the next scale rather than in parts.
        if (Math.Max(outside.Width, outside.Height) <= Longest && Math.Min(outside.Width, outside.Height) <= Deepest)
        {
            Assert.InRange(scale, 1, metric ? 50 : 48);
        }
    }

    /// <summary>Walls, holes and elevations too are at scales of the ruler.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void Every_page_has_a_scale_of_the_list(string name)
    {
        var scales = RulerScales.Of(DrawnPlans.Request(AllPlans.Text(name)).Plan.Units);
        Assert.All(DrawnPlans.Set(name), p => Assert.Contains(p.Denominator, scales));
    }
}
