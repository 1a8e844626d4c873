using System.Text.Json;
using Floorplan.Cli.Output.Reports;
using Xunit;

namespace Floorplan.Tests.Cli;

public class MendCommandTests
{
    [Fact]
    public void The_file_is_changed_and_every_changed_line_is_said()
    {
        using var folder = new TemporaryFolder();
        folder.Write(
            "unit.unit",
            Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal));
        var run = CliRun.In(folder.Path, "", "check", "--mend", "unit.unit");

        Assert.Contains("mended [exit-locks-in]", run.Error);
        Assert.Contains("  + door", run.Error);
        Assert.Contains("opens from inside", File.ReadAllText(folder.At("unit.unit")));
        Assert.DoesNotContain("exit-locks-in", run.Out);
    }

    [Fact]
    public void A_sound_plan_and_a_broken_text_are_left_as_they_are()
    {
        using var folder = new TemporaryFolder();
        folder.Write("good.unit", Plans.Good);
        folder.Write("broken.unit", Plans.Broken);
        Assert.Equal(0, CliRun.In(folder.Path, "", "check", "--mend", "good.unit").Exit);
        Assert.Equal(1, CliRun.In(folder.Path, "", "check", "--mend", "broken.unit").Exit);
        Assert.Equal(Plans.Good, File.ReadAllText(folder.At("good.unit")));
        Assert.Equal(Plans.Broken, File.ReadAllText(folder.At("broken.unit")));
    }

    [Fact]
    public void A_finding_says_the_line_that_mends_it_in_every_form_of_output()
    {
        string plan =
            Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal);
        int line = plan[..plan.IndexOf("d5 holding", StringComparison.Ordinal)].Count(c => c == '\n') + 1;

        Assert.Contains($": write line {line} as: door", CliRun.WithInput(plan, "check", "-").Out);
        Assert.Contains($"write line {line} as: door", CliRun.WithInput(plan, "check", "-", "--output", "markdown").Out);

        using var json = JsonDocument.Parse(CliRun.WithInput(plan, "check", "-", "--output", "json").Out);
        var proposal = json.RootElement.GetProperty("files")[0].GetProperty("findings").EnumerateArray()
            .First(f => f.GetProperty("rule").GetString() == "exit-locks-in").GetProperty("proposal");
        Assert.Equal(line, proposal.GetProperty("line").GetInt32());
        string after = plan.Split('\n')[line - 1] + ", opens from inside";
        Assert.Equal(after, proposal.GetProperty("after").GetString());

        // Applied as the standard says (OASIS SARIF 2.1.0, 3.57): the deleted region goes, the inserted content comes in its place.
        using var sarif = JsonDocument.Parse(CliRun.WithInput(plan, "check", "-", "--output", "sarif").Out);
        var change = sarif.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray()
            .First(r => r.GetProperty("ruleId").GetString() == "exit-locks-in").GetProperty("fixes")[0].GetProperty("artifactChanges")[0]
                .GetProperty("replacements")[0];
        var region = change.GetProperty("deletedRegion");
        Assert.Equal(line, region.GetProperty("startLine").GetInt32());
        int from = region.GetProperty("startColumn").GetInt32() - 1;
        int to = region.GetProperty("endColumn").GetInt32() - 1;
        string old = plan.Split('\n')[line - 1];
        Assert.Equal(after, old[..from] + change.GetProperty("insertedContent").GetProperty("text").GetString() + old[to..]);
    }

    [Fact]
    public void Standard_input_cannot_be_mended()
    {
        var run = CliRun.WithInput(Plans.Good, "check", "--mend", "-");
        Assert.Equal(2, run.Exit);
        Assert.Contains("cannot mend standard input", run.Error);
    }

    [Fact]
    public void All_findings_are_printed_before_the_changes_that_mend_them()
    {
        string plan =
            Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal);

        string printed = CliRun.WithInput(plan, "check", "-").Out;

        int finding = printed.LastIndexOf("  mend: ", StringComparison.Ordinal), change = printed.IndexOf(
            "\n  mends 1: write line", StringComparison.Ordinal);
        Assert.InRange(finding, 0, change);
        Assert.Contains("[1 exit-locks-in]", printed);
        Assert.Contains(CheckText.Caution, printed[..change]);
    }
}
