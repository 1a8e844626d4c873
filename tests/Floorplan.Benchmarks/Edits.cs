using System.Text.RegularExpressions;
using Floorplan.Drawing.Live;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Svg;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;
using Floorplan.Sizing;

namespace Floorplan.Benchmarks;

/// <summary>
/// One-character edits of a plan, to its findings and the SVG of the one sheet in view: everything worked out again, against a plan that
/// keeps what the edit does not touch. Both in turns, in one run.
/// </summary>
internal static partial class Edits
{
    private const int WarmUp = 25;
    private const int Rounds = 60;

    /// <param name="sheet">The sheet in view.</param>
    public static void Run(string text, int sheet)
    {
        var table =
            new Table(
                "one character in", "fresh, ms", "fastest", "processor", "kept, ms", "fastest", "processor", "of it findings", "sheet");
        foreach (var (name, make) in All(text))
        {
            Row(table, name, make, text, sheet);
        }

        table.Print();
    }

    private static void Row(Table table, string name, Func<int, string> make, string text, int sheet)
    {
        var live = new LivePlan("bench.unit", new NoFiles());
        live.Edit(text);
        live.Sheet(sheet);
        List<(double Wall, double Processor)> fresh = [], kept = [];
        List<double> findings = [];
        for (int round = 0; round < WarmUp + Rounds; round++)
        {
            string edited = make(round);
            var whole = Timed(() => Fresh(edited, sheet));
            var toFindings = Timed(() => live.Edit(edited));
            var toSheet = Timed(() => live.Sheet(sheet).Pages.Sum(p => SvgWriter.Write(p).Length));
            if (round >= WarmUp)
            {
                fresh.Add(whole);
                kept.Add((toFindings.Wall + toSheet.Wall, toFindings.Processor + toSheet.Processor));
                findings.Add(toFindings.Wall);
            }
        }

        double median = Median(kept.Select(k => k.Wall));
        table.Add(
            name, Table.Text(Median(fresh.Select(f => f.Wall))), Table.Text(fresh.Min(f => f.Wall)),
            Table.Text(Median(fresh.Select(f => f.Processor))), Table.Text(median), Table.Text(kept.Min(k => k.Wall)),
            Table.Text(Median(kept.Select(k => k.Processor))), Table.Text(Median(findings)), Table.Text(median - Median(findings)));
    }

    private static void Fresh(string text, int sheet)
    {
        var plan = Pipeline.Bind(Pipeline.Parse(text));
        var facts = new PlanFacts(plan, new FloorSpace(plan));
        SvgWriter.Write(SheetSet.Draw(new SheetRequest(facts, Pipeline.Check(facts)), [sheet])[0]);
    }

    /// <summary>Every round changes another character of the same place.</summary>
    private static IEnumerable<(string Name, Func<int, string> Make)> All(string text)
    {
        yield return ("a comment", round => $"{text}\n# note {(char)('a' + (round % 26))}\n");
        yield return ("a label", round => Label().Replace(text, m => m.Value + (char)('a' + (round % 26)), 1));
        yield return ("a size", round => Size().Replace(text, m => m.Value[..^1] + (round % 10), 1));
        if (Flow().IsMatch(text))
        {
            yield return ("a flow", round => round % 2 == 0 ? text : Flow().Replace(text, "", 1));
        }
    }

    private static (double Wall, double Processor) Timed(Action work)
    {
        double processor = CpuClock.Now;
        long start = System.Diagnostics.Stopwatch.GetTimestamp();
        work();
        return (System.Diagnostics.Stopwatch.GetElapsedTime(start).TotalMilliseconds, CpuClock.Now - processor);
    }

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted[sorted.Count / 2];
    }

    [GeneratedRegex("(?<=station [^\n]*\"[^\"\n]*)(?=\")")]
    private static partial Regex Label();

    /// <summary>The first figure after the word, whole.</summary>
    [GeneratedRegex("(?<=\n  size +)[0-9]+(?= x)")]
    private static partial Regex Size();

    /// <summary>A station that a flow calls at between two others: left out.</summary>
    [GeneratedRegex("(?<=-> b[0-9-]+) -> b[0-9-]+(?= -> b[0-9-]+)")]
    private static partial Regex Flow();
}
