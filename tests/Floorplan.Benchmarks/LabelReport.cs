using System.Globalization;
using Floorplan.Drawing.Sheets;

namespace Floorplan.Benchmarks;

/// <summary>The score of the labels on all sheets of the templates and of the invented plans, as tables.</summary>
internal static class LabelReport
{
    public static void Run(string templates)
    {
        var plans = Directory.EnumerateFiles(templates, "*.unit").Order(StringComparer.Ordinal)
            .Select(f => (Name: Path.GetFileNameWithoutExtension(f), Text: File.ReadAllText(f)));
        Print("template", [.. plans.Select(p => (p.Name, Score(p.Text).Aggregate((a, b) => a + b)))]);

        List<IReadOnlyList<LabelScore>> invented = [.. Enumerable.Range(0, InventedPlans.Count).Select(n => Score(InventedPlans.Make(n)))];
        Print(
            "invented plans, sheet",
            [.. SheetSet.All.Select(
                (s, i) => (s.Number.ToString(CultureInfo.InvariantCulture), invented.Select(p => p[i]).Aggregate((a, b) => a + b)))]);
    }

    private static IReadOnlyList<LabelScore> Score(string text)
    {
        var facts = Pipeline.Facts(Pipeline.Bind(Pipeline.Parse(text)));
        return [.. Pipeline.Draw(facts, Pipeline.Check(facts)).Select(LabelScore.Of)];
    }

    private static void Print(string what, List<(string Name, LabelScore Score)> rows)
    {
        var table =
            new Table(
                what, "sheets", "texts", "faults", "leaders", "mm of leader", "leaders crossing", "lines crossed", "keyed", "shortened",
                "lists cut short");
        foreach (var (name, s) in rows.Append(("all", rows.Aggregate(LabelScore.Nothing, (sum, r) => sum + r.Score))))
        {
            table.Add(
                [name, .. new[] {
                    s.Sheets, s.Texts, s.Faults, s.Leaders, (int)s.LeaderMm, s.LeadersCrossing, s.LinesCrossed, s.Keyed, s.Shortened,
                    s.Lost }.Select(n => n.ToString(CultureInfo.InvariantCulture))]);
        }

        table.Print();
    }
}
