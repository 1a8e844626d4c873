using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Framework;

public sealed class PlanLimitsTests
{
    private static readonly Rule Headroom = RuleCatalogue.Find("headroom")!;
    private static readonly Rule Door = RuleCatalogue.Find("door-blocked")!;

    /// <summary>29 CFR 1910.36(g)(1): 7 ft 6 in = 2286 mm. ISO 14122-2: 2100 mm.</summary>
    [Theory]
    [InlineData("us", 2286, Severity.Error)]
    [InlineData("eu", 2100, Severity.Warning)]
    [InlineData("none", 2100, Severity.Warning)]
    public void The_plans_code_chooses_the_figure(string code, double millimetres, Severity severity)
    {
        var limit = new PlanLimits(Plan($"code {code}")).Find(Headroom, Headroom.Limits[0].Key)!;

        Assert.Equal(millimetres, limit.Value);
        Assert.Equal(severity, limit.Severity);
    }

    [Fact]
    public void A_plans_own_limit_counts_and_both_figures_are_printed_with_the_reason()
    {
        var limit = new PlanLimits(Plan("code us", "limit headroom 2200 \"mobile unit, agreed with the inspector\""))
            .Find(Headroom, Headroom.Limits[0].Key)!;

        Assert.Equal(2200, limit.Value);
        Assert.Contains("2200 mm, set in this plan: mobile unit, agreed with the inspector", limit.Text);
        Assert.Contains("2286 mm (29 CFR 1910.36(g)(1)", limit.Text);
    }

    [Fact]
    public void A_plans_own_limit_sets_only_the_first_figure()
    {
        var limit = new PlanLimits(Plan("code us", "limit headroom 2200 \"agreed\"")).Find(Headroom, Headroom.Limits[2].Key)!;

        Assert.Equal(2032, limit.Value);
        Assert.Null(limit.SetBy);
    }

    [Fact]
    public void A_limit_of_another_kind_of_unit_is_not_used()
        => Assert.Null(new PlanLimits(Plan("code us", "limit door-blocked 20 % \"agreed\"")).Find(Door, Door.Limits[0].Key)!.SetBy);

    [Theory]
    [InlineData("metric", "limit 600 mm (")]
    [InlineData("feet", "limit 1'-11 5/8\" (")]
    public void A_limit_is_printed_in_the_plans_units(string units, string start)
        => Assert.StartsWith(start, new PlanLimits(Plan("units " + units)).Find(Door, Door.Limits[0].Key)!.Text);

    private static Plan Plan(string head, string more = "") => CheckedPlan.Plan($"""
        plan "Test shed"
          {head}
        shell shed 6 m x 3 m x 2.5 m
        room one "One" clean from west to east
        {more}
        """);
}
