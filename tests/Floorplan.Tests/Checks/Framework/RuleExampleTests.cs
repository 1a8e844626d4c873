using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Quantities;
using Floorplan.Model.Limits;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Framework;

/// <summary>What every rule page promises: its bad plan shows the fault once, its good plan does not.</summary>
public sealed class RuleExampleTests
{
    /// <summary>Far enough to turn any figure of the catalogue round.</summary>
    private const double Loosened = 100;

    public static TheoryData<string> Names => [.. RuleCatalogue.All.Select(r => r.Name)];

    public static TheoryData<string> NamesWithLimit => [.. RuleCatalogue.All.Where(r => r.Limits.Count > 0).Select(r => r.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_bad_plan_has_the_fault_once(string name)
    {
        var finding = Assert.Single(CheckedPlan.Check(RuleCatalogue.Find(name)!.Bad, name));

        Assert.NotEmpty(finding.Message);
        Assert.DoesNotMatch(@"\.$", finding.Message);
        Assert.NotEmpty(finding.Mend);
        Assert.NotEmpty(finding.Things);
        Assert.True(finding.Span.Length > 0);
        Assert.Null(finding.AcceptedBy);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_good_plan_does_not_have_the_fault(string name)
        => Assert.DoesNotContain(CheckedPlan.Check(RuleCatalogue.Find(name)!.Good), f => f.Rule == name);

    /// <summary>Whoever copies an example from a rule page gets a plan with that fault and no other.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void The_bad_plan_has_no_other_fault(string name)
        => Assert.All(
            CheckedPlan.Check(RuleCatalogue.Find(name)!.Bad), f => Assert.True(f.Rule == name || f.AcceptedBy is not null, Said(f)));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_good_plan_has_no_fault_at_all(string name)
        => Assert.All(CheckedPlan.Check(RuleCatalogue.Find(name)!.Good), f => Assert.True(f.AcceptedBy is not null, Said(f)));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_finding_can_be_accepted_and_is_still_listed(string name)
    {
        var plan = CheckedPlan.Plan(RuleCatalogue.Find(name)!.Bad);
        var stands = CheckedPlan.Check(plan).Single(f => f.Rule == name);
        var acceptance = new Acceptance(name, stands.Things, "agreed on site", "the owner", plan.Head.Span);

        var all = CheckedPlan.Check(plan with { Acceptances = [.. plan.Acceptances, acceptance] });

        var accepted = Assert.Single(all, f => f.Rule == name);
        Assert.Equal(acceptance, accepted.AcceptedBy);
        Assert.Equal(accepted, all[^1]);
    }

    [Theory]
    [MemberData(nameof(NamesWithLimit))]
    public void Setting_the_limit_changes_what_is_found(string name)
    {
        var rule = RuleCatalogue.Find(name)!;
        bool[] changed =
            [.. new[] { rule.Bad, rule.Good }.SelectMany(text => new[] { 1 / Loosened, Loosened }.Select(by => Differs(rule, text, by)))];

        Assert.Contains(true, changed);
    }

    private static string Said(Finding finding) => $"{finding.Severity} {finding.Rule}: {finding.Message}";

    private static bool Differs(Rule rule, string text, double by)
    {
        var plan = CheckedPlan.Plan(text);
        var limit = rule.Limits[0];
        var set = new LimitOverride(
            rule.Name,
            limit.Unit == LimitUnit.Millimetres ? Length.FromMillimetres(limit.Value * by) : null,
            Figure(limit, by),
            "tried out in a test",
            plan.Head.Span);
        return Count(plan) != Count(plan with { Limits = [set] });

        int Count(Floorplan.Model.Plan p) => CheckedPlan.Check(p).Count(f => f.Rule == rule.Name);
    }

    private static Quantity? Figure(RuleLimit limit, double by) => limit.Unit switch
    {
        LimitUnit.SquareMetres => new Quantity((decimal)(limit.Value * by), new Unit("m2", QuantityKind.Area, v => v)),
        LimitUnit.CubicMetres => new Quantity((decimal)(limit.Value * by), new Unit("m3", QuantityKind.Volume, v => v)),
        LimitUnit.Celsius => new Quantity((decimal)(limit.Value * by), new Unit("C", QuantityKind.Temperature, v => v)),
        LimitUnit.Percent => new Quantity((decimal)(limit.Value * by), new Unit("%", QuantityKind.Ratio, v => v / 100)),
        LimitUnit.Kilograms => new Quantity((decimal)(limit.Value * by), new Unit("kg", QuantityKind.Mass, v => v)),
        LimitUnit.Lux => new Quantity((decimal)(limit.Value * by), new Unit("lux", QuantityKind.Illuminance, v => v)),
        LimitUnit.Minutes => new Quantity((decimal)(limit.Value * by), new Unit("min", QuantityKind.Time, v => v * 60)),
        LimitUnit.AirChanges => new Quantity((decimal)(limit.Value * by), UnitTable.Rate("changes/h")!),
        LimitUnit.AirFlow => new Quantity((decimal)(limit.Value * by), new Unit("m3/s", QuantityKind.AirFlow, v => v)),
        LimitUnit.Count => new Quantity((decimal)Math.Ceiling(limit.Value * by), new Unit("", QuantityKind.Count, v => v)),
        _ => null,
    };
}
