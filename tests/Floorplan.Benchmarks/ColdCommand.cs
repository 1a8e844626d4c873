using System.Diagnostics;
using System.Globalization;

namespace Floorplan.Benchmarks;

/// <summary>
/// The program as a shell starts it: a new process each time, its processor time and its time from start to end, and the most memory it
/// held.
/// </summary>
internal static class ColdCommand
{
    private const int Runs = 15;

    /// <param name="program">The built <c>floorplan.dll</c>, or the published program.</param>
    /// <param name="arguments">The command line to time, such as <c>check a.unit</c>.</param>
    public static void Run(string program, IReadOnlyList<string> arguments)
    {
        var (times, processor) = (new List<double>(), new List<double>());
        long memory = 0;
        for (int i = 0; i <= Runs; i++)
        {
            var clock = Stopwatch.StartNew();
            using var process = Process.Start(Path.GetExtension(program) == ".dll"
                ? new ProcessStartInfo("dotnet", [program, .. arguments]) { RedirectStandardOutput = true }
                : new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
            double used = 0;
            var output = process.StandardOutput.ReadToEndAsync();
            while (!process.WaitForExit(1))
            {
                var (most, busy) = Look(process);
                (memory, used) = (Math.Max(memory, most), Math.Max(used, busy));
            }

            output.Wait();
            // The first run only brings the files into memory.
            if (i > 0)
            {
                times.Add(clock.Elapsed.TotalMilliseconds);
                processor.Add(used);
            }
        }

        times.Sort();
        processor.Sort();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{string.Join(' ', arguments)}: processor time median {processor[Runs / 2]:0} ms, least {processor[0]:0} ms; wall median "
                + $"{times[Runs / 2]:0} ms, fastest {times[0]:0} ms, slowest {times[^1]:0} ms of {Runs}; most memory {memory >> 20} MB"));
    }

    private static (long Memory, double ProcessorMs) Look(Process process)
    {
        try
        {
            process.Refresh();
            return (process.PeakWorkingSet64, process.TotalProcessorTime.TotalMilliseconds);
        }
        catch (InvalidOperationException)
        {
            // It ended between the two calls.
            return default;
        }
    }
}
