using System.Diagnostics;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>The program as the shell starts it. <see cref="Outside.PublishedProcessTests"/> does the same with the published one.</summary>
public class ProcessTests
{
    private protected virtual TestedProgram Program => TestedProgram.Built;

    [SkippableTheory]
    [InlineData("", 0)]
    [InlineData("1", 0)]
    public void Output_of_a_pipe_is_plain_whatever_the_environment(string noColour, int exit)
    {
        var run = Program.Run(Path.GetTempPath(), "", ["rules"], noColour);
        Assert.Equal(exit, run.Exit);
        Assert.DoesNotContain('\u001b', run.Out);
        Assert.Contains("overlap", run.Out);
    }

    [SkippableFact]
    public void Standard_input_and_exit_code_reach_the_shell()
    {
        Assert.Equal(0, Program.Run(Path.GetTempPath(), Plans.Good, ["check", "-"]).Exit);
        Assert.Equal(1, Program.Run(Path.GetTempPath(), Plans.Overlapping, ["check", "-"]).Exit);
        Assert.Equal(2, Program.Run(Path.GetTempPath(), "", ["check", "no-such-file.unit"]).Exit);
    }

    /// <summary>What was said and did not arrive is told; only a reader that stops is not.</summary>
    [SkippableTheory]
    [InlineData("rules > /dev/full", 2, "floorplan: standard output cannot be written: No space left on device\n")]
    [InlineData("rules --help > /dev/full", 2, "floorplan: standard output cannot be written: No space left on device\n")]
    [InlineData("rules >&-", 2, "floorplan: standard output is closed, so what it should say is lost\n")]
    [InlineData("check - <&-", 2, "floorplan: stdin: cannot be read: standard input is closed\n")]
    [InlineData("rules <&- >/dev/null", 0, "")]
    [InlineData("rules 2>&- >/dev/null", 0, "")]
    [InlineData("rules <&- >&- 2>&-", 2, "")]
    [InlineData("check not-there.unit 2>&-", 2, "")]
    [InlineData("check not-there.unit 2>/dev/full", 2, "")]
    [InlineData("rules | true", 0, "")]
    [InlineData("explain overlap | head -c 1 >/dev/null", 0, "")]
    public void Standard_streams_that_are_closed_or_full_are_told(string rest, int exit, string error)
        => Assert.Equal((exit, error), Shell("set -o pipefail; floorplan " + rest));

    [SkippableTheory]
    [InlineData("check unit.unit")]
    [InlineData("rules")]
    public void A_working_folder_that_is_gone_is_told(string command) => Assert.Equal(
        (2, "floorplan: the folder that you work in is not there any more; change to one that is\n"),
        Shell("cd $(mktemp -d) && rmdir $PWD && floorplan " + command));

    /// <summary>A line for bash; what it printed on standard output is not looked at.</summary>
    private (int Exit, string Error) Shell(string line)
    {
        Skip.If(!File.Exists("/dev/full") || !File.Exists("/bin/bash"), "needs bash and /dev/full");
        var info = new ProcessStartInfo("/bin/bash") { RedirectStandardError = true, RedirectStandardOutput = true };
        info.ArgumentList.Add("-c");
        info.ArgumentList.Add($"floorplan() {{ timeout 60 {Program.InShell} \"$@\"; }}; {line}");
        using var process = Process.Start(info)!;
        process.BeginOutputReadLine();
        string error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, error);
    }
}
