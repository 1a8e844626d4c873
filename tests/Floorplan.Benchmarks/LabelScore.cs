using System.Text.RegularExpressions;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Tests.Drawing.Support;

namespace Floorplan.Benchmarks;

/// <summary>How well the labels of sheets stand; less of everything is better.</summary>
/// <param name="Texts">Texts in all, to hold the others against.</param>
/// <param name="Faults">Texts over texts, under heavy lines or outside the frame, found by <see cref="SceneAudit"/>.</param>
/// <param name="Leaders">Lines that lead from a label to its thing.</param>
/// <param name="LeaderMm">Their length together, on paper.</param>
/// <param name="LeadersCrossing">Pairs of leaders that cross each other.</param>
/// <param name="LinesCrossed">Other lines, thin or heavy, that leaders cross.</param>
/// <param name="Keyed">Labels that only found room for a number, or for none, with their words in the key of marks.</param>
/// <param name="Shortened">Texts that end in an ellipsis; the whole stands in a table.</param>
/// <param name="Lost">Sheets on which lines of a list found no room.</param>
internal sealed partial record LabelScore(
    int Sheets, int Texts, int Faults, int Leaders, double LeaderMm, int LeadersCrossing, int LinesCrossed, int Keyed, int Shortened,
    int Lost)
{
    public static LabelScore Nothing { get; } = new(0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    public static LabelScore Of(SheetScene sheet)
    {
        List<TextItem> texts = [.. sheet.Items.OfType<TextItem>()];
        List<LineItem> leaders = [.. sheet.Items.OfType<LineItem>().Where(l => l.Layer == Layers.Leader)];
        List<(PaperPoint A, PaperPoint B)> lines =
            [.. sheet.Items.Where(i => i.Layer is not (Layers.Leader or Layers.FloorHatch or Layers.WallHatch)).SelectMany(Parts)];
        return new LabelScore(
            1,
            texts.Count,
            SceneAudit.Faults(sheet).Count,
            leaders.Count,
            leaders.Sum(l => Math.Sqrt(Math.Pow(l.To.X - l.From.X, 2) + Math.Pow(l.To.Y - l.From.Y, 2))),
            leaders.Select((l, i) => leaders.Skip(i + 1).Count(o => Cross(l.From, l.To, o.From, o.To))).Sum(),
            leaders.Sum(l => lines.Count(o => Cross(l.From, l.To, o.A, o.B))),
            texts.Count(t => t.Layer == Layers.Schedule && KeyMark().IsMatch(t.Text)),
            texts.Count(t => t.Text.EndsWith('…')),
            texts.Any(t => t.Text.EndsWith("find no room here", StringComparison.Ordinal)) ? 1 : 0);
    }

    public static LabelScore operator +(LabelScore a, LabelScore b) => new(
        a.Sheets + b.Sheets, a.Texts + b.Texts, a.Faults + b.Faults, a.Leaders + b.Leaders, a.LeaderMm + b.LeaderMm,
        a.LeadersCrossing + b.LeadersCrossing, a.LinesCrossed + b.LinesCrossed, a.Keyed + b.Keyed, a.Shortened + b.Shortened, a.Lost
            + b.Lost);

    private static IEnumerable<(PaperPoint A, PaperPoint B)> Parts(SceneItem item) => item switch
    {
        LineItem line => [(line.From, line.To)],
        PolylineItem line => line.Points.Zip(line.Closed ? line.Points.Skip(1).Append(line.Points[0]) : line.Points.Skip(1)),
        _ => [],
    };

    private static bool Cross(PaperPoint a, PaperPoint b, PaperPoint c, PaperPoint d) =>
        Side(a, b, c) * Side(a, b, d) < 0 && Side(c, d, a) * Side(c, d, b) < 0;

    private static int Side(PaperPoint a, PaperPoint b, PaperPoint p)
        => Math.Sign(((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X)));

    [GeneratedRegex("^(k[0-9]+|-)$")]
    private static partial Regex KeyMark();
}
