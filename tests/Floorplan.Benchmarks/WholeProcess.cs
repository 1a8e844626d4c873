using System.Diagnostics;

namespace Floorplan.Benchmarks;

/// <summary>
/// The published and the built program as a shell starts them, and another program that reads and paints the same sheets, by the clock
/// from start to end. They take turns, so that what else the machine does falls on all of them alike.
/// </summary>
internal static class WholeProcess
{
    private const int Rounds = 15;

    /// <param name="published">The native program.</param>
    /// <param name="built">The built <c>floorplan.dll</c>.</param>
    /// <param name="plan">The plan to check and draw.</param>
    public static void Run(string published, string built, string plan)
    {
        string folder = Directory.CreateTempSubdirectory("floorplan-times-").FullName;
        try
        {
            var table = new Table("one process, ms", "published, median", "fastest", "built, median", "fastest", "built / published");
            foreach (var (name, arguments) in Works(plan, folder))
            {
                var times = Take(() => Time(published, arguments), () => Time("dotnet", [built, .. arguments]));
                double[] cells =
                    [times[0].Median, times[0].Fastest, times[1].Median, times[1].Fastest, times[1].Median / times[0].Median];
                table.Add([name, .. cells.Select(Table.Text)]);
            }

            table.Print();
            Paint(Directory.EnumerateFiles(Path.Combine(folder, "svg"), "*.svg").Order().ToList());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static IEnumerable<(string Name, string[] Arguments)> Works(string plan, string folder)
    {
        yield return ("`check`", ["check", plan]);
        yield return ("`draw`: ten SVG", ["draw", plan, "--out", Path.Combine(folder, "svg")]);
        yield return ("`draw`: SVG, PDF, PNG, DXF", ["draw", plan, "--out", Path.Combine(folder, "all"), "--format", "svg,pdf,png,dxf"]);
    }

    private static void Paint(List<string> sheets)
    {
        try
        {
            var times = Take(() => sheets.Sum(s => Time("rsvg-convert", [s])));
            Console.WriteLine(
                $"`rsvg-convert` reads and paints the same {sheets.Count} sheets, a process each, in {Table.Text(times[0].Median)} ms "
                    + $"(fastest {Table.Text(times[0].Fastest)}).");
        }
        catch (System.ComponentModel.Win32Exception)
        {
            Console.WriteLine("`rsvg-convert` is not on this machine.");
        }
    }

    private static List<(double Median, double Fastest)> Take(params Func<double>[] turns)
    {
        // The first round only brings the files into memory.
        var rounds = Enumerable.Range(0, Rounds + 1).Select(_ => turns.Select(t => t()).ToList()).Skip(1).ToList();
        return [.. turns.Select((_, i) => rounds.Select(r => r[i]).Order().ToList()).Select(t => (t[Rounds / 2], t[0]))];
    }

    private static double Time(string program, string[] arguments)
    {
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        process.StandardOutput.BaseStream.CopyTo(Stream.Null);
        process.WaitForExit();
        return process.ExitCode == 0
            ? clock.Elapsed.TotalMilliseconds
            : throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}");
    }
}
