using System.Diagnostics;
using Floorplan.Cli;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary><c>draw --follow</c> as a shell starts it: it draws again at each save, and ends when it is asked to.</summary>
public class FollowTests
{
    private const string Waiting = "waiting for the next save; Ctrl+C ends it";
    private static readonly TimeSpan patience = TimeSpan.FromSeconds(120);

    [Fact]
    public async Task A_saved_plan_is_drawn_again_as_a_fresh_run_draws_it()
    {
        using var folder = new TemporaryFolder();
        string text = DrawnPlans.Text("fish-20ft");
        folder.Write("unit.unit", text);
        using var program = Start(folder.Path, "draw", "unit.unit", "--follow", "--out", "out", "--sheets", "1,6");
        string first = await UntilItWaits(program);
        Assert.Contains("out/unit-1-general-arrangement.svg".Replace('/', Path.DirectorySeparatorChar), first, StringComparison.Ordinal);

        foreach (string edited in new[]
        {
            text.Replace("plan \"", "plan \"New ", StringComparison.Ordinal),
            "# a note\n" + text,
        })
        {
            folder.Write("unit.unit", edited);
            await UntilItWaits(program);
            Assert.Equal(0, CliRun.In(folder.Path, "", "draw", "unit.unit", "--out", "fresh", "--sheets", "1,6").Exit);
            foreach (string sheet in folder.Files.Where(f => f.StartsWith("fresh/", StringComparison.Ordinal)))
            {
                Assert.Equal(File.ReadAllText(folder.At(sheet)), File.ReadAllText(folder.At(sheet.Replace("fresh/", "out/"))));
            }
        }

        // Half a statement: it says so, draws nothing, and goes on.
        folder.Write("unit.unit", text + "\nstat");
        await UntilItWaits(program);
        folder.Write("unit.unit", text);
        await UntilItWaits(program);
        Assert.Equal(0, await End(program));
    }

    [Fact]
    public async Task A_saved_file_of_kinds_is_drawn_again_and_what_did_not_change_is_not_written_again()
    {
        using var folder = new TemporaryFolder();
        folder.Write("kinds.unit", "kind table\n  size 600 x 600 x 900\n");
        folder.Write(
            "unit.unit",
            "plan \"A\"\nshell shed 5000 x 4000 x 2500\nkinds from kinds\nroom a \"A\" dry from west to east\n"
                + "door d a to outside, south wall, centred, 1000 x 2100\nstation t \"T\" like table in a\n  place at 1000, 1000\n");
        using var program = Start(folder.Path, "draw", "unit.unit", "--follow", "--out", "out");
        Assert.Contains("unit-stations.csv", await UntilItWaits(program), StringComparison.Ordinal);

        folder.Write("kinds.unit", "kind table\n  size 700 x 600 x 900\n");
        string second = await UntilItWaits(program);
        Assert.Contains("wrote out", second, StringComparison.Ordinal);
        Assert.DoesNotContain("unit-openings.csv", second, StringComparison.Ordinal);
        Assert.Contains("700", File.ReadAllText(folder.At("out/unit-stations.csv")), StringComparison.Ordinal);
        Assert.Equal(0, await End(program));
    }

    [Fact]
    public void Standard_input_cannot_be_followed()
    {
        var run = CliRun.WithInput(Plans.Good, "draw", "-", "--follow");
        Assert.Equal(2, run.Exit);
        Assert.Equal(
            "floorplan: --follow draws a file again when it is saved, and standard input cannot be; name a file\n", run.Error);
    }

    private static Process Start(string folder, params string[] arguments)
    {
        var info = new ProcessStartInfo("dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = folder,
        };
        info.ArgumentList.Add(typeof(App).Assembly.Location);
        foreach (string argument in arguments)
        {
            info.ArgumentList.Add(argument);
        }

        var process = Process.Start(info)!;
        process.ErrorDataReceived += (_, _) => { };
        process.BeginErrorReadLine();
        return process;
    }

    private static async Task<string> UntilItWaits(Process program)
    {
        var lines = new List<string>();
        while (await program.StandardOutput.ReadLineAsync().WaitAsync(patience) is { } line && line != Waiting)
        {
            lines.Add(line);
        }

        Assert.False(program.HasExited, string.Join('\n', lines));
        return string.Join('\n', lines);
    }

    /// <summary>
    /// As the system asks a program to end, which it takes as it takes Ctrl+C; that one is ignored by all that a shell starts in the
    /// background. Where there are no such signals it is ended hard.
    /// </summary>
    private static async Task<int> End(Process program)
    {
        if (OperatingSystem.IsWindows())
        {
            program.Kill();
            return 0;
        }

        using var kill = Process.Start("kill", ["-TERM", program.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        await program.WaitForExitAsync().WaitAsync(patience);
        return program.ExitCode;
    }
}
