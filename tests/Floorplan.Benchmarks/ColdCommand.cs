using System.Diagnostics;
using System.Globalization;

namespace Floorplan.Benchmarks;

/// <summary>The program as a shell starts it: a new process each time, from its start to its end, and the most memory it held.</summary>
internal static class ColdCommand
{
    private const int Runs = 15;

    /// <param name="program">The built <c>floorplan.dll</c>.</param>
    /// <param name="arguments">The command line to time, such as <c>check a.plan</c>.</param>
    public static void Run(string program, IReadOnlyList<string> arguments)
    {
        var times = new List<double>();
        long memory = 0;
        for (int i = 0; i <= Runs; i++)
        {
            var clock = Stopwatch.StartNew();
            using var process = Process.Start(new ProcessStartInfo("dotnet", [program, .. arguments]) { RedirectStandardOutput = true })!;
            var output = process.StandardOutput.ReadToEndAsync();
            while (!process.WaitForExit(1))
            {
                memory = Math.Max(memory, Peak(process));
            }

            output.Wait();
            // The first run only brings the files into memory.
            if (i > 0)
            {
                times.Add(clock.Elapsed.TotalMilliseconds);
            }
        }

        times.Sort();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{string.Join(' ', arguments)}: median {times[Runs / 2]:0} ms, fastest {times[0]:0} ms, slowest {times[^1]:0} ms of {Runs}; most memory {memory >> 20} MB"));
    }

    private static long Peak(Process process)
    {
        try
        {
            process.Refresh();
            return process.PeakWorkingSet64;
        }
        catch (InvalidOperationException)
        {
            // It ended between the two calls.
            return 0;
        }
    }
}
