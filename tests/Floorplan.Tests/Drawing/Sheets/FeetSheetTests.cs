using Floorplan.Checks.Framework;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Schedules;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>
/// No metric figure on a sheet or in a schedule of a feet plan; sheet 9 and lists of findings may quote a source's clause.
/// </summary>
public sealed class FeetSheetTests
{
    private static readonly HashSet<string> Quoted =
        [.. RuleCatalogue.All.SelectMany(r => r.Sources).SelectMany(s => MetricFigures.All(s.Text))];

    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_sheet(string template)
    {
        var sheets = DrawnPlans.Draw(InFeet.Of(DrawnPlans.Text(template)));
        Assert.Equal("", string.Join('\n', sheets.SelectMany(s => Lines(s).SelectMany(t => MetricFigures.In(t.Line)
            .Where(f => MetricFigures.In(t.WithNext).Contains(f)
                && !(s.Sheet == 9 && Quoted.Contains(f))
                && !IsCountOfBars(t.Line, f))
            .Select(f => $"{s.Name}: {f} in {t.Line}")))));
    }

    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_schedule(string template)
    {
        var schedules = Schedule.All(CheckedPlan.Facts(CheckedPlan.Plan(InFeet.Of(DrawnPlans.Text(template)))));
        Assert.Empty(schedules.SelectMany(s => s.Columns.Where(c => c.Split(' ')[^1] is "mm" or "kg" or "m2" or "m²" or "L" or "L/min")
            .Concat(s.Rows.SelectMany(r => r.Select(c => c?.ToString() ?? "")).Where(c => MetricFigures.In(c).Count > 0))
                .Select(c => $"{s.Name}: {c}")));
    }

    /// <summary>The same in feet may stand at the beginning of the next line of the same text, which is drawn right under it.</summary>
    private static IEnumerable<(string Line, string WithNext)> Lines(SheetScene sheet)
    {
        TextItem[] texts = [.. sheet.Items.OfType<TextItem>()];
        return texts.Select((t, i) =>
            (t.Text, i + 1 < texts.Length && IsNextLine(t, texts[i + 1]) ? $"{t.Text} {texts[i + 1].Text}" : t.Text));
    }

    private static bool IsNextLine(TextItem line, TextItem next)
        => (line.Layer, line.Group, line.At.X) == (next.Layer, next.Group, next.At.X)
        && Math.Abs(next.At.Y - line.At.Y - (line.CapHeight * TextMeasure.LinePitch)) < 1e-6;

    /// <summary>Steel is bought in bars; the unit of pressure has the same word.</summary>
    private static bool IsCountOfBars(string text, string figure)
        => figure.EndsWith(" bar", StringComparison.Ordinal) && text.Contains($": {figure},", StringComparison.Ordinal);
}
