using System.Diagnostics;
using YamlDotNet.RepresentationModel;

namespace Floorplan.Benchmarks;

/// <summary>
/// All tables of README.md beside this file that one process can measure, in under three minutes. Processor time, not wall time.
/// </summary>
internal static class Report
{
    private const int Stations = 40;
    private const double Budget = 6000;

    public static void Run()
    {
        string text = PlanGenerator.Make(Stations);
        Console.WriteLine($"A plan of {Stations} stations, warm; median of the rounds:\n");
        Stages.Run(text, Budget);
        Edit(text);
        Console.WriteLine("Reading the same content:\n");
        Parse();
        Console.WriteLine("Growth with stations:\n");
        Scaling.Run([]);
        Console.WriteLine("One flow of many stops, without sheets:\n");
        Scaling.Stops();
    }

    /// <summary>One character to and fro, everything worked out again.</summary>
    private static void Edit(string text)
    {
        string edited = text.Replace("600 x 1200 x 900", "600 x 1200 x 901", StringComparison.Ordinal);
        bool even = false;
        double wall = double.PositiveInfinity;
        double ms = Fastest(() =>
        {
            // Sheets are drawn side by side, so that a person waits less than the processors work.
            var watch = Stopwatch.StartNew();
            Pipeline.All((even = !even) ? edited : text);
            wall = Math.Min(wall, watch.Elapsed.TotalMilliseconds);
        });
        Console.WriteLine(
            $"One character edited, to findings and the SVG of all sheets, fastest: {Table.Text(ms)} ms of processor time, "
                + $"{Table.Text(wall)} ms by the clock\n");
    }

    private static void Parse()
    {
        var table = new Table("stations", "this parser, ms", "YamlDotNet, ms", "ratio");
        foreach (int size in new[] { Stations, 1000 })
        {
            string plan = PlanGenerator.Make(size), yaml = PlanAsYaml.Write(plan);
            double own = Fastest(() => Pipeline.Parse(plan));
            double other = Fastest(() => new YamlStream().Load(new StringReader(yaml)));
            table.Add($"{size}", Table.Text(own), Table.Text(other), Table.Text(other / own));
        }

        table.Print();
    }

    private static double Fastest(Action work)
    {
        double best = double.PositiveInfinity;
        for (double start = CpuClock.Now; CpuClock.Now - start < Budget / 2;)
        {
            double before = CpuClock.Now;
            work();
            best = Math.Min(best, CpuClock.Now - before);
        }

        return best;
    }
}
