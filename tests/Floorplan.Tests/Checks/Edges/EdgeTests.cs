using Floorplan.Checks.Framework;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Edges;

/// <summary>What every figure promises right at its edge.</summary>
public sealed class EdgeTests
{
    private static readonly IReadOnlyList<Edge> All =
        [
            .. HandsEdges.All, .. PowerEdges.All, .. WaterEdges.All, .. GettingOutEdges.All, .. ShellEdges.All, .. RoomEdges.All,
            .. HygieneEdges.All, .. DayEdges.All];

    public static TheoryData<string> Names => [.. All.Select(e => e.ToString())];

    public static TheoryData<string> NamesOfSettable => [.. All.Where(e => e.Set is not null).Select(e => e.ToString())];

    [Theory]
    [MemberData(nameof(Names))]
    public void At_the_limit_a_plan_keeps_to_it(string name)
    {
        var edge = Find(name);

        var found = CheckedPlan.Check(edge.Plan(edge.Limit), edge.Rule);

        Assert.Equal(edge.Lighter is { } lighter ? [lighter] : [], found.Select(f => f.LimitValue!.Value));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Just_past_the_limit_it_is_found_once_with_both_figures(string name)
    {
        var edge = Find(name);

        var finding = Assert.Single(CheckedPlan.Check(edge.Plan(edge.Past), edge.Rule));

        Assert.Equal(edge.Limit, finding.LimitValue!.Value, Math.Abs(edge.Past - edge.Limit) / 2);
        Assert.Equal(edge.Past, finding.Measured!.Value, edge.Within);
        Assert.Equal(edge.Things.Order(StringComparer.Ordinal), finding.Things.Order(StringComparer.Ordinal));
        Assert.Null(finding.AcceptedBy);
    }

    [Theory]
    [MemberData(nameof(NamesOfSettable))]
    public void A_plans_own_limit_holds_instead_and_is_named_with_its_reason(string name)
    {
        var edge = Find(name);
        var (loose, strict) = edge.Set!.Value;

        Assert.Empty(CheckedPlan.Check(With(edge, edge.Past, loose), edge.Rule));
        var finding = Assert.Single(CheckedPlan.Check(With(edge, edge.Limit, strict), edge.Rule));
        Assert.Contains("set in this plan: agreed on site", finding.Limit);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void An_accepted_finding_is_listed_and_does_not_stand(string name)
    {
        var edge = Find(name);
        string accept = $"accept {edge.Rule} at {string.Join(" and ", edge.Things)} \"agreed on site\" by \"the inspector\"";

        var all = CheckedPlan.Check(edge.Plan(edge.Past) + "\n" + accept);

        var accepted = Assert.Single(all, f => f.Rule == edge.Rule);
        Assert.Equal("agreed on site", accepted.AcceptedBy!.Reason);
        Assert.DoesNotContain(all, f => f.Rule == "accepts-nothing");
    }

    /// <summary>
    /// A trolley at a corner is searched for within a tolerance, and held against the textbook corner in tests of its own.
    /// </summary>
    private static readonly string[] WithoutEdge = ["trolley-cannot-turn"];

    [Fact]
    public void Every_rule_with_a_figure_is_tried_right_at_it()
        => Assert.Equal(WithoutEdge, RuleCatalogue.All.Where(r => r.Limits.Count > 0).Select(r => r.Name).Except(All.Select(e => e.Rule)));

    private static Edge Find(string name) => All.Single(e => e.ToString() == name);

    private static string With(Edge edge, double value, string limit)
        => $"{edge.Plan(value)}\nlimit {edge.Rule} {limit} \"agreed on site\"";
}
