using System.Diagnostics;
using System.Globalization;
using Floorplan.Checks.Framework;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Space;

namespace Floorplan.Benchmarks;

/// <summary>How the time of each stage grows with the number of stations; prints a table with the fitted exponents.</summary>
internal static class Scaling
{
    private static readonly int[] Sizes = [10, 100, 1_000, 10_000];
    private static readonly string[] Stages = ["parse", "bind", "space", "check", "draw", "write", "all"];

    /// <summary>Small plans are repeated until about this much time is spent, and the fastest counts.</summary>
    private static readonly TimeSpan Budget = TimeSpan.FromSeconds(2);

    public static void Run(IReadOnlyList<int> sizes)
    {
        sizes = sizes.Count > 0 ? sizes : Sizes;
        Once(PlanGenerator.Make(sizes[0]));
        var times = new Dictionary<int, double[]>();
        foreach (int size in sizes)
        {
            string text = PlanGenerator.Make(size);
            double[] best = Once(text);
            var spent = Stopwatch.StartNew();
            while (spent.Elapsed < Budget)
            {
                best = [.. best.Zip(Once(text), Math.Min)];
            }

            times[size] = best;
            Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{size} stations: {best[^1]:0.0} ms"));
        }

        Console.WriteLine("| stage | " + string.Join(" | ", sizes.Select(n => n + " stations, ms")) + " | exponent | last step |");
        Console.WriteLine("|---|" + string.Concat(Enumerable.Repeat("---:|", sizes.Count + 2)));
        for (int stage = 0; stage < Stages.Length; stage++)
        {
            double[] row = [.. sizes.Select(n => times[n][stage])];
            Console.WriteLine($"| {Stages[stage]} | " + string.Join(" | ", row.Select(t => Text(t, "0.00"))) + $" | {Text(Fit(sizes, row), "0.00")} | {Text(Fit([.. sizes.TakeLast(2)], [.. row.TakeLast(2)]), "0.00")} |");
        }
    }

    private static double[] Once(string text)
    {
        GC.Collect();
        var clock = Stopwatch.StartNew();
        var marks = new List<double>();
        T Mark<T>(T value)
        {
            marks.Add(clock.Elapsed.TotalMilliseconds);
            return value;
        }

        SyntaxTree tree = Mark(Pipeline.Parse(text));
        Plan plan = Mark(Pipeline.Bind(tree));
        FloorSpace space = Mark(Pipeline.Space(plan));
        IReadOnlyList<Finding> findings = Mark(Pipeline.Check(plan, space));
        IReadOnlyList<SheetScene> sheets = Mark(Pipeline.Draw(plan, space, findings));
        Mark(Pipeline.Write(sheets));
        double[] stages = [.. marks.Select((m, i) => i == 0 ? m : m - marks[i - 1])];
        return [.. stages, marks[^1]];
    }

    /// <summary>The slope of a straight line through the logarithms, by least squares.</summary>
    private static double Fit(IReadOnlyList<int> sizes, IReadOnlyList<double> times)
    {
        double[] x = [.. sizes.Select(n => Math.Log(n))];
        double[] y = [.. times.Select(t => Math.Log(t))];
        double mx = x.Average(), my = y.Average();
        return x.Zip(y, (a, b) => (a - mx) * (b - my)).Sum() / x.Sum(a => (a - mx) * (a - mx));
    }

    private static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
