using Xunit;

namespace Floorplan.Tests.Cli;

public class CheckCommandTests
{
    [Fact]
    public void A_plan_without_errors_exits_with_0_and_says_what_was_checked()
    {
        var run = CliRun.WithInput(Plans.Good, "check", "-");
        Assert.Equal(0, run.Exit);
        Assert.Contains("rules checked, code eu", run.Out);
        Assert.Contains("rules had something to look at; not judged:", run.Out.Replace('\n', ' '));
        Assert.Contains("local codes", run.Out);
        Assert.Equal("", run.Error);
    }

    [Fact]
    public void A_finding_shows_weight_place_sentence_line_and_mend()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Plans.Overlapping);
        var run = CliRun.In(folder.Path, "", "check", "a.unit");

        Assert.Equal(1, run.Exit);
        Assert.Matches(@"(?m)^a\.unit:\d+:\d+: error: .* \[1 overlap\]\n  line \d+: station .*\n", run.Out);
        Assert.Matches("(?m)^  mend: .+$", run.Out);
        Assert.Matches(@"(?m)^a\.unit: 1 error.*rules checked", run.Out);
    }

    [Fact]
    public void A_text_that_does_not_read_exits_with_1_and_says_where()
    {
        var run = CliRun.WithInput(Plans.Broken, "check", "-");
        Assert.Equal(1, run.Exit);
        Assert.Matches(@"(?m)^stdin:\d+:1: error: ", run.Out);
        Assert.Contains("staton", run.Out);
        Assert.Contains("must be mended", run.Out);
    }

    [Fact]
    public void Several_files_are_each_reported_and_the_worst_exit_wins()
    {
        using var folder = new TemporaryFolder();
        folder.Write("good.unit", Plans.Good);
        folder.Write("bad.unit", Plans.Overlapping);

        var two = CliRun.In(folder.Path, "", "check", "good.unit", "bad.unit");
        Assert.Equal(1, two.Exit);
        Assert.Matches("(?m)^good.unit: ", two.Out);
        Assert.Matches("(?m)^bad.unit: 1 error", two.Out);
        Assert.Matches("(?m)^2 files: 1 error", two.Out);

        var three = CliRun.In(folder.Path, "", "check", "missing.unit", "good.unit", "bad.unit");
        Assert.Equal(2, three.Exit);
        Assert.Contains("missing.unit: there is no such file", three.Error);
        Assert.Matches("(?m)^bad.unit: 1 error", three.Out);
    }

    [Fact]
    public void Accepted_findings_are_listed_as_accepted_and_do_not_fail_the_run()
    {
        string plan = Plans.Overlapping + "\naccept overlap \"agreed for this test\"\n";
        var run = CliRun.WithInput(plan, "check", "-");
        Assert.Equal(0, run.Exit);
        Assert.Matches(@"(?m): accepted: .*\[\d+ overlap\]$", run.Out);
        Assert.Contains("  accepted: agreed for this test", run.Out);
        Assert.Contains("1 accepted", run.Out);
    }

    [Fact]
    public void Two_runs_print_the_same_bytes()
        => Assert.Equal(CliRun.WithInput(Plans.Overlapping, "check", "-"), CliRun.WithInput(Plans.Overlapping, "check", "-"));
}
