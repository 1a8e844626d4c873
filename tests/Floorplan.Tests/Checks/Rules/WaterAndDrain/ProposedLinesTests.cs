using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.WaterAndDrain;

/// <summary>A line that a mend proposes can be copied into the plan as it stands, and mends it.</summary>
public sealed class ProposedLinesTests
{
    private const string Metric =
        "plan \"P\"\n  units metric\nshell shed 8000 x 5000 x 2700\nroom wash \"Wash\" dirty from west to east\nstation bench \"Bench\" "
            + "in wash\n  size 1200 x 600 x 900\n  place against east wall, 900 from south\n  needs cold 8 L/min, hot 4 L/min at 60 C, "
            + "drain\n";

    private const string Feet =
        "plan \"P\"\n  units feet\nshell shed 26 ft x 16 ft x 9 ft\nroom wash \"Wash\" dirty from west to east\nstation bench \"Bench\" "
            + "in wash\n  size 48 in x 24 in x 36 in\n  place against north wall, 40 in from west\n  needs cold 2 gpm, hot 1 gpm at 140 "
            + "F, drain\n";

    [Theory]
    [InlineData(Metric, "drain-too-far")]
    [InlineData(Metric, "room-without-drain", ", drain")]
    [InlineData(Metric, "water-too-far")]
    [InlineData(Feet, "drain-too-far")]
    [InlineData(Feet, "room-without-drain", ", drain")]
    [InlineData(Feet, "water-too-far")]
    public void It_mends_the_plan(string plan, string rule, string without = "no such words")
    {
        string text = plan.Replace(without, "", StringComparison.Ordinal);
        var findings = CheckedPlan.Check(text, rule);
        Assert.NotEmpty(findings);
        foreach (var finding in findings)
        {
            text += finding.Mend.Split("such as: ")[1].Split(';')[0] + "\n";
        }

        Assert.DoesNotContain(CheckedPlan.Check(text, rule), f => f.Severity == Floorplan.Language.Diagnostics.Severity.Error);
    }

    /// <summary>A washed room without a drain, and a bench in it that asks for one, lack the same drain.</summary>
    [Fact]
    public void A_drain_that_a_station_asks_for_is_missed_once()
        => Assert.Equal(
            ["drain-too-far"], CheckedPlan.Check(Metric).Select(f => f.Rule).Where(r => r.Contains("drain", StringComparison.Ordinal)));
}
