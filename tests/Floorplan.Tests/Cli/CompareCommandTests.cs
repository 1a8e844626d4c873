using Xunit;

namespace Floorplan.Tests.Cli;

public class CompareCommandTests
{
    [Fact]
    public void Differences_and_findings_that_came_and_went_are_told()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.plan", Plans.Good);
        folder.Write("b.plan", Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal));

        var there = CliRun.In(folder.Path, "", "compare", "a.plan", "b.plan");
        Assert.Equal(0, there.Exit);
        Assert.Contains("was closes itself, opens from inside", there.Out);
        Assert.Contains("[exit-locks-in]", there.Out);
        Assert.Contains("! new ", there.Out);

        var back = CliRun.In(folder.Path, "", "compare", "b.plan", "a.plan");
        Assert.Contains("* gone: ", back.Out);
        Assert.DoesNotContain("! new ", back.Out);
    }

    [Fact]
    public void The_same_file_twice_does_not_differ()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.plan", Plans.Good);
        Assert.Contains("nothing differs", CliRun.In(folder.Path, "", "compare", "a.plan", "a.plan").Out);
    }

    [Theory]
    [InlineData("missing.plan", 2)]
    [InlineData("broken.plan", 1)]
    public void What_cannot_be_read_is_said_and_nothing_is_compared(string file, int exit)
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.plan", Plans.Good);
        folder.Write("broken.plan", Plans.Broken);
        var run = CliRun.In(folder.Path, "", "compare", "a.plan", file);
        Assert.Equal(exit, run.Exit);
        Assert.Contains(file, run.Error);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void Draw_clouds_what_changed_since_another_revision()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.plan", Plans.Good);
        folder.Write("b.plan", Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal));

        CliRun.In(folder.Path, "", "draw", "b.plan", "--since", "a.plan", "--sheets", "1", "--out", ".");
        string svg = File.ReadAllText(folder.At("b-1-general-arrangement.svg"));
        Assert.Contains("<title>change:1</title>", svg);
        Assert.Contains("Changes since", svg);

        CliRun.In(folder.Path, "", "draw", "b.plan", "--sheets", "1", "--out", ".");
        Assert.DoesNotContain("change:1", File.ReadAllText(folder.At("b-1-general-arrangement.svg")));
    }

    [Theory]
    [InlineData("missing.plan")]
    [InlineData("broken.plan")]
    public void Draw_says_why_a_revision_cannot_be_compared_with(string since)
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.plan", Plans.Good);
        folder.Write("broken.plan", Plans.Broken);
        var run = CliRun.In(folder.Path, "", "draw", "a.plan", "--since", since, "--out", "out");
        Assert.Equal(2, run.Exit);
        Assert.Contains(since, run.Error);
        Assert.False(Directory.Exists(folder.At("out")));
    }
}
