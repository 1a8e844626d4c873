using System.Diagnostics;
using Floorplan.Tests.Architecture;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>What one process gave.</summary>
internal sealed record ProcessRun(int Exit, string Out, string Error);

/// <summary>The native program that FLOORPLAN_PUBLISHED names, and the built one to hold it against; each as a shell starts it.</summary>
internal static class PublishedProgram
{
    /// <summary>Skips the test where no program is named, and fails it where it has to be.</summary>
    public static string Find()
    {
        string? program = Environment.GetEnvironmentVariable("FLOORPLAN_PUBLISHED");
        OutsidePrograms.Require(File.Exists(program), "FLOORPLAN_PUBLISHED names no program that `dotnet publish` made");
        return Path.GetFullPath(program!);
    }

    public static ProcessRun Run(string folder, string input, params string[] arguments) => Start(Find(), folder, input, arguments);

    public static ProcessRun RunBuilt(string folder, string input, params string[] arguments)
        => Start("dotnet", folder, input, [Built, .. arguments]);

    /// <summary>The program that this test run was built with.</summary>
    public static string Built { get; } = Repository.At("src", "Floorplan.Cli", "bin",
        AppContext.BaseDirectory.Contains("Release", StringComparison.Ordinal) ? "Release" : "Debug", "net10.0", "floorplan.dll");

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

    private static ProcessRun Start(string program, string folder, string input, string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        var error = process.StandardError.ReadToEndAsync();
        Give(process, input);
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return new ProcessRun(process.ExitCode, output, error.Result);
    }
}
