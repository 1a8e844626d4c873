using System.Globalization;

namespace Floorplan.Benchmarks;

/// <summary>How the processor time of each stage grows with the size of the plan; prints tables with the fitted exponents.</summary>
internal static class Scaling
{
    private static readonly int[] Sizes = [10, 100, 1_000, 10_000];

    /// <summary>Small plans are repeated until about so many ms are spent, and the fastest counts.</summary>
    private const double Budget = 2000;

    /// <summary>The exponent that the design asks for at most.</summary>
    private const double Asked = 1.2;

    /// <summary>Rows faster than this at the largest size, in ms, are too short to have an exponent.</summary>
    private const double Short = 5;

    public static void Run(IReadOnlyList<int> sizes)
    {
        sizes = sizes.Count > 0 ? sizes : Sizes;
        var times = Measure(sizes, PlanGenerator.Make, true);
        Print(sizes, "stations", [.. Grouped(times)]);
        Print(
            sizes, "stations",
            [.. times.Where(t => Stages.IsRule(t.Name)
                && t.Ms[^1] >= Short
                && Fit([.. sizes.TakeLast(2)], [.. t.Ms.TakeLast(2)]) > Asked)]);
    }

    /// <summary>One flow that goes round the same few stations over and over: routes, meetings and rules, without sheets.</summary>
    public static void Stops()
    {
        int[] sizes = [200, 2_000, 20_000];
        Print(sizes, "stops", [.. Grouped(Measure(sizes, PlanGenerator.OneFlow, false))]);
    }

    private static List<(string Name, double[] Ms)> Measure(IReadOnlyList<int> sizes, Func<int, string> make, bool draw)
    {
        Stages.Once(make(sizes[0]), draw);
        var runs = new List<List<(string Name, double Ms)>>();
        foreach (int size in sizes)
        {
            string text = make(size);
            var best = Stages.Once(text, draw);
            for (double start = CpuClock.Now; CpuClock.Now - start + best.Sum(b => b.Ms) < Budget;)
            {
                best = [.. best.Zip(Stages.Once(text, draw), (a, b) => (a.Name, Math.Min(a.Ms, b.Ms)))];
            }

            runs.Add(best);
            Console.Error.WriteLine($"{size}: {Table.Text(best.Sum(b => b.Ms))} ms");
        }

        return [.. runs[0].Select((r, i) => (r.Name, runs.Select(run => run[i].Ms).ToArray()))];
    }

    /// <summary>All rules as one row, and the sum.</summary>
    private static IEnumerable<(string Name, double[] Ms)> Grouped(List<(string Name, double[] Ms)> times)
    {
        foreach (var group in times.GroupBy(t => Stages.IsRule(t.Name) ? "rules" : t.Name))
        {
            yield return (group.Key, Sum(group));
        }

        yield return ("all", Sum(times));

        static double[] Sum(IEnumerable<(string Name, double[] Ms)> rows) =>
            rows.Select(r => r.Ms).Aggregate((a, b) => [.. a.Zip(b, (p, q) => p + q)]);
    }

    private static void Print(IReadOnlyList<int> sizes, string what, IReadOnlyList<(string Name, double[] Ms)> rows)
    {
        if (rows.Count == 0)
        {
            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture, $"No rule grows faster than n^{Asked} from {sizes[^2]} to {sizes[^1]} {what}.\n"));
            return;
        }

        var table = new Table(["stage", .. sizes.Select(n => $"{n} {what}, ms"), "exponent", "last step"]);
        foreach (var (name, ms) in rows)
        {
            table.Add(
                [name, .. ms.Select(Table.Text), Table.Text(Fit(sizes, ms)), Table.Text(Fit([.. sizes.TakeLast(2)], [.. ms.TakeLast(2)]))]);
        }

        table.Print();
    }

    /// <summary>The slope of a straight line through the logarithms, by least squares.</summary>
    private static double Fit(IReadOnlyList<int> sizes, IReadOnlyList<double> times)
    {
        double[] x = [.. sizes.Select(n => Math.Log(n))];
        double[] y = [.. times.Select(t => Math.Log(t))];
        double mx = x.Average(), my = y.Average();
        return x.Zip(y, (a, b) => (a - mx) * (b - my)).Sum() / x.Sum(a => (a - mx) * (a - mx));
    }
}
