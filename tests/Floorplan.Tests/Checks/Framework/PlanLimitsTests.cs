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
    private static readonly Rule Sink = RuleCatalogue.Find("hand-sink-too-far")!;
    private static readonly Rule Door = RuleCatalogue.Find("door-blocked")!;

    /// <summary>29 CFR 1910.36(g)(1): 7 ft 6 in = 2286 mm. ASR A1.8, Germany: 2100 mm, and guidance never warns.</summary>
    [Theory]
    [InlineData("code us", 2286, Severity.Error)]
    [InlineData("country us-wa", 2286, Severity.Error)]
    [InlineData("country de", 2100, Severity.Note)]
    public void Place_chooses_the_figure(string head, double millimetres, Severity severity)
    {
        var limit = new PlanLimits(Plan(head)).Find(Headroom, Headroom.Limits[0].Key)!;

        Assert.Equal(millimetres, limit.Value);
        Assert.Equal(severity, limit.Severity);
    }

    [Theory]
    [InlineData("code eu")]
    [InlineData("code none")]
    [InlineData("country fr")]
    public void Where_no_figure_holds_there_is_none(string head)
        => Assert.Null(new PlanLimits(Plan(head)).Find(Headroom, Headroom.Limits[0].Key));

    /// <summary>Reg 15 of South Africa binds abattoirs there, is quoted for the same trade elsewhere, and says nothing of cheese.</summary>
    [Theory]
    [InlineData("country za, trade poultry", Severity.Warning, false)]
    [InlineData("country za", Severity.Note, true)]
    [InlineData("country de, trade red meat", Severity.Note, true)]
    [InlineData("country de, trade dairy", null, false)]
    [InlineData("code eu", null, false)]
    [InlineData("code none, trade poultry", null, false)]
    public void A_figure_binds_where_place_and_trade_match_and_may_be_quoted_elsewhere(string head, Severity? severity, bool advice)
    {
        var limit = new PlanLimits(Plan(head)).Find(Sink, Sink.Limits[1].Key);

        Assert.Equal(severity, limit?.Severity);
        Assert.Equal(advice, limit?.IsAdvice ?? false);
    }

    [Fact]
    public void What_is_quoted_says_that_it_does_not_bind()
        => Assert.StartsWith(
            "no figure for poultry in Germany; elsewhere 3",
            new PlanLimits(Plan("country de, trade poultry")).Find(Sink, Sink.Limits[1].Key)!.Text);

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
        var limit = new PlanLimits(Plan("code us", "limit headroom 2200 \"agreed\"")).Find(
            Headroom, "headroom under rails and hung things")!;

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
