using Xunit;

namespace Floorplan.Tests.Cli;

public class MendCommandTests
{
    [Fact]
    public void The_file_is_changed_and_every_changed_line_is_said()
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.plan", Plans.Good.Replace("swings out, opens from inside", "swings out", StringComparison.Ordinal));
        var run = CliRun.In(folder.Path, "", "check", "--mend", "unit.plan");

        Assert.Contains("mended [exit-locks-in]", run.Error);
        Assert.Contains("  + door", run.Error);
        Assert.Contains("opens from inside", File.ReadAllText(folder.At("unit.plan")));
        Assert.DoesNotContain("exit-locks-in", run.Out);
    }

    [Fact]
    public void A_sound_plan_and_a_broken_text_are_left_as_they_are()
    {
        using var folder = new TemporaryFolder();
        folder.Write("good.plan", Plans.Good);
        folder.Write("broken.plan", Plans.Broken);
        Assert.Equal(0, CliRun.In(folder.Path, "", "check", "--mend", "good.plan").Exit);
        Assert.Equal(1, CliRun.In(folder.Path, "", "check", "--mend", "broken.plan").Exit);
        Assert.Equal(Plans.Good, File.ReadAllText(folder.At("good.plan")));
        Assert.Equal(Plans.Broken, File.ReadAllText(folder.At("broken.plan")));
    }

    [Fact]
    public void Standard_input_cannot_be_mended()
    {
        var run = CliRun.WithInput(Plans.Good, "check", "--mend", "-");
        Assert.Equal(2, run.Exit);
        Assert.Contains("cannot mend standard input", run.Error);
    }
}
