using System.Diagnostics;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Outside;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>
/// One of our two programs, as a shell starts it: the built one through <c>dotnet</c>, the published one by its own name.
/// </summary>
internal sealed record TestedProgram(string File, params string[] First)
{
    /// <summary>The program that this test run was built with.</summary>
    public static TestedProgram Built { get; } = new("dotnet", Repository.At("src", "Floorplan.Cli", "bin",
        AppContext.BaseDirectory.Contains("Release", StringComparison.Ordinal) ? "Release" : "Debug", "net10.0", "floorplan.dll"));

    /// <summary>
    /// The native one that FLOORPLAN_PUBLISHED names. Skips the test where none is named, and fails it where it has to be.
    /// </summary>
    public static TestedProgram Published
    {
        get
        {
            string? program = Environment.GetEnvironmentVariable("FLOORPLAN_PUBLISHED");
            OutsidePrograms.Require(System.IO.File.Exists(program), "FLOORPLAN_PUBLISHED names no program that `dotnet publish` made");
            return new TestedProgram(Path.GetFullPath(program!));
        }
    }

    /// <summary>What calls it in a line for bash.</summary>
    public string InShell => string.Join(' ', First.Prepend(File).Select(word => $"'{word}'"));

    /// <param name="noColour">What NO_COLOR says.</param>
    public CliRun Run(string folder, string input, string[] arguments, string noColour = "")
    {
        var info = new ProcessStartInfo(File, [.. First, .. arguments])
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        info.Environment["NO_COLOR"] = noColour;
        using var process = Process.Start(info)!;
        var error = process.StandardError.ReadToEndAsync();
        Give(process, input);
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new CliRun(process.ExitCode, output, error.Result);
    }

    /// <summary>The native program may have ended before it is given what it never asked for.</summary>
    private static void Give(Process process, string input)
    {
        try
        {
            process.StandardInput.Write(input);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            Assert.True(process.WaitForExit(TimeSpan.FromSeconds(10)), "it closed its input and goes on");
        }
    }
}
