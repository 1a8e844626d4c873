using System.Text.Json;
using Floorplan.Checks.Framework;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>The reports for other readers: Markdown for an inspector's file, SARIF 2.1.0 for editors and code hosts.</summary>
public class CheckReportTests
{
    [Fact]
    public void Markdown_lists_findings_and_every_rule_that_applied_with_its_source()
    {
        var run = CliRun.WithInput(Plans.Good, "check", "-", "--output", "markdown");
        Assert.Equal(0, run.Exit);
        Assert.StartsWith("# ", run.Out);
        var rules = run.Out.Split('\n').Where(l => l.StartsWith("| `", StringComparison.Ordinal)).ToList();
        Assert.True(rules.Count > 25, $"{rules.Count} rules");
        Assert.All(rules, l => Assert.True(l.Split(" | ")[2].Length > 10, l));
        Assert.Contains(rules, l => l.Contains("| nothing found |", StringComparison.Ordinal));
    }

    [Fact]
    public void Markdown_gives_an_accepted_deviation_with_its_reason()
    {
        string plan = Plans.Overlapping + "\naccept overlap \"seen | and <agreed> by both\"\n";
        string text = CliRun.WithInput(plan, "check", "-", "--output", "markdown").Out;
        Assert.Contains("accepted: seen \\| and \\<agreed\\> by both", text);
        Assert.Contains("| `overlap` | 1 accepted |", text);
    }

    /// <summary>
    /// The required properties and the permitted values of OASIS SARIF 2.1.0: sections 3.13, 3.14, 3.19, 3.27, 3.30, 3.35.
    /// </summary>
    [Fact]
    public void Sarif_has_what_the_format_requires()
    {
        string plan = Plans.Overlapping + "\naccept overlap \"agreed\"\n";
        using var document = JsonDocument.Parse(CliRun.WithInput(plan, "check", "-", "--output", "sarif").Out);
        Assert.Equal("2.1.0", document.RootElement.GetProperty("version").GetString());
        var run = Assert.Single(document.RootElement.GetProperty("runs").EnumerateArray());
        var rules = run.GetProperty("tool").GetProperty("driver").GetProperty("rules");
        Assert.Equal(RuleCatalogue.All.Select(r => r.Name), rules.EnumerateArray().Select(r => r.GetProperty("id").GetString()!));
        Assert.True(run.GetProperty("invocations")[0].GetProperty("executionSuccessful").GetBoolean());

        var results = run.GetProperty("results").EnumerateArray().ToList();
        Assert.NotEmpty(results);
        foreach (var result in results)
        {
            Assert.Equal(
                result.GetProperty("ruleId").GetString(), rules[result.GetProperty("ruleIndex").GetInt32()].GetProperty("id").GetString());
            Assert.Contains(result.GetProperty("level").GetString(), new[] { "none", "note", "warning", "error" });
            Assert.NotEmpty(result.GetProperty("message").GetProperty("text").GetString()!);
            var region = result.GetProperty("locations")[0].GetProperty("physicalLocation").GetProperty("region");
            Assert.True(region.GetProperty("startLine").GetInt32() >= 1 && region.GetProperty("startColumn").GetInt32() >= 1);
            Assert.True(region.GetProperty("endLine").GetInt32() >= region.GetProperty("startLine").GetInt32());
        }

        var suppressed = results.Single(r => r.GetProperty("ruleId").GetString() == "overlap").GetProperty("suppressions")[0];
        Assert.Equal("inSource", suppressed.GetProperty("kind").GetString());
        Assert.Equal("agreed", suppressed.GetProperty("justification").GetString());
    }

    [Fact]
    public void Sarif_of_a_broken_text_and_of_a_missing_file_says_why()
    {
        using var broken = JsonDocument.Parse(CliRun.WithInput(Plans.Broken, "check", "-", "--output", "sarif").Out);
        Assert.Contains(
            "staton",
            broken.RootElement.GetProperty("runs")[0].GetProperty("results")[0].GetProperty("message").GetProperty("text").GetString()!);

        using var missing = JsonDocument.Parse(CliRun.WithInput("", "check", "not-there.unit", "--output", "sarif").Out);
        var invocation = missing.RootElement.GetProperty("runs")[0].GetProperty("invocations")[0];
        Assert.False(invocation.GetProperty("executionSuccessful").GetBoolean());
        Assert.Contains(
            "not-there.unit",
            invocation.GetProperty("toolExecutionNotifications")[0].GetProperty("message").GetProperty("text").GetString()!);
    }

    /// <summary>Reading a text this long again is more work than may be spent on looking for changes.</summary>
    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("sarif")]
    public void That_more_changes_could_be_tried_is_said_in_every_report(string output)
    {
        string plan = Plans.Overlapping + "\n" + string.Concat(Enumerable.Repeat($"# {new string('-', 120)}\n", 10_000));
        Assert.Contains("more are not tried", CliRun.WithInput(plan, "check", "-", "--output", output).Out);
        Assert.DoesNotContain("more are not tried", CliRun.WithInput(Plans.Overlapping, "check", "-", "--output", output).Out);
    }
}
