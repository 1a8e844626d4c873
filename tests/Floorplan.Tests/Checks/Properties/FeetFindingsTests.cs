using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Properties;

/// <summary>Who builds in feet reads no metric figure in a finding or a mend; only the source of a limit may quote its clause.</summary>
public sealed class FeetFindingsTests
{
    public static TheoryData<string> Rules => [.. RuleCatalogue.All.Select(r => r.Name)];

    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    [Theory]
    [MemberData(nameof(Rules))]
    public void The_bad_example_of_a_rule(string rule)
    {
        var findings = CheckedPlan.Check(InFeet.Of(RuleCatalogue.Find(rule)!.Bad));
        Assert.Contains(findings, f => f.Rule == rule);
        AssertFeet(findings);
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void A_template(string template) => AssertFeet(CheckedPlan.Check(InFeet.Of(DrawnPlans.Text(template))));

    [Fact]
    public void A_metric_figure_is_seen()
    {
        Assert.Equal(["600 mm", "5 m2", "60 C"], MetricFigures.In("600 mm wide, 5 m2, at 60 C"));
        Assert.Empty(MetricFigures.In("over 50 °C (122 °F), within 35 ft (11 m), 2 in or 50 mm, 3 min"));
    }

    private static void AssertFeet(IEnumerable<Finding> findings) => Assert.Empty(
        findings.SelectMany(f => MetricFigures.In($"{f.Message}; {f.Mend}; {f.Limit.Split('(')[0]}")
            .Select(m => $"{f.Rule}: {m} in {f.Message}; {f.Mend}; {f.Limit}")));
}
