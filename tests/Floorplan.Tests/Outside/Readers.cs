using System.Diagnostics;

namespace Floorplan.Tests.Outside;

/// <summary>Runs a reader of files that is not ours, and gives what it prints.</summary>
internal static class Readers
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    /// <summary>Fails the test when the program fails; what it complains of is part of the answer.</summary>
    public static (string Out, string Error) Run(string program, params string[] arguments)
    {
        var info = new ProcessStartInfo(program, arguments) { RedirectStandardError = true, RedirectStandardOutput = true };
        info.Environment["PYTHONDONTWRITEBYTECODE"] = "1";
        info.Environment["PYTHONIOENCODING"] = "utf-8";
        using var process = Process.Start(info)!;
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEndAsync();
        if (!process.WaitForExit(Patience))
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"{program} still runs after {Patience.TotalSeconds} s");
        }

        return process.ExitCode == 0
            ? (output.Result, error.Result)
            : throw new InvalidOperationException($"{program} fails with {process.ExitCode}: {error.Result}{output.Result}");
    }

    /// <summary>
    /// The Python that Debian's packages are for, which another on the PATH may hide; the test is skipped without the module.
    /// </summary>
    public static string PythonWith(string module)
    {
        const string Debian = "/usr/bin/python3";
        string python = File.Exists(Debian) ? Debian : OutsidePrograms.Find("python3");
        bool there;
        try
        {
            Run(python, "-c", "import " + module);
            there = true;
        }
        catch (InvalidOperationException)
        {
            there = false;
        }

        OutsidePrograms.Require(there, $"python3 has no module {module}");
        return python;
    }
}
