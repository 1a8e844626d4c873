using Xunit;

namespace Floorplan.Tests.Cli;

public class CompareCommandTests
{
    [Fact]
    public void Differences_and_findings_that_came_and_went_are_told()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.plan", Plans.Good);
        folder.Write("b.plan", Plans.Good.Replace("swings out, opens from inside", "swings out", StringComparison.Ordinal));

        var there = CliRun.In(folder.Path, "", "compare", "a.plan", "b.plan");
        Assert.Equal(0, there.Exit);
        Assert.Contains("was opens from inside", there.Out);
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
}
