using System.Diagnostics;
using Floorplan.Cli;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>The program as the shell starts it.</summary>
public class ProcessTests
{
    [Theory]
    [InlineData("", 0)]
    [InlineData("1", 0)]
    public void Output_of_a_pipe_is_plain_whatever_the_environment(string noColour, int exit)
    {
        var (code, output) = Start("rules", noColour, "");
        Assert.Equal(exit, code);
        Assert.DoesNotContain('\u001b', output);
        Assert.Contains("overlap", output);
    }

    [Fact]
    public void Standard_input_and_exit_code_reach_the_shell()
    {
        Assert.Equal(0, Start("check -", "", Plans.Good).Exit);
        Assert.Equal(1, Start("check -", "", Plans.Overlapping).Exit);
        Assert.Equal(2, Start("check no-such-file.unit", "", "").Exit);
    }

    private static (int Exit, string Out) Start(string arguments, string noColour, string input)
    {
        var info = new ProcessStartInfo("dotnet", $"\"{typeof(App).Assembly.Location}\" {arguments}")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        info.Environment["NO_COLOR"] = noColour;
        using var process = Process.Start(info)!;
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        process.StandardInput.Write(input);
        process.StandardInput.Close();
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output);
    }
}
