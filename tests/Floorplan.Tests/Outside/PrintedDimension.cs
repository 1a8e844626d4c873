using System.Globalization;
using System.Text.RegularExpressions;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using UglyToad.PdfPig.Content;

namespace Floorplan.Tests.Outside;

/// <summary>
/// A dimension as a person reads it off the paper: its figures are put together from the letters of the PDF that stand at one place. Only
/// where to look, and which row it belongs to, comes from the sheet.
/// </summary>
/// <param name="Mm">What the figures say.</param>
/// <param name="Centre">Of the letters, paper mm from the top left corner.</param>
/// <param name="Width">Of the letters along their line, paper mm.</param>
internal sealed partial record PrintedDimension(string Text, double Mm, string Row, bool Upright, PaperPoint Centre, double Width)
{
    private const double PointsPerMm = 72 / 25.4;
    private const double Inch = 25.4;

    public static IReadOnlyList<PrintedDimension> On(Page page, SheetScene sheet) =>
        [.. sheet.Items.OfType<TextItem>().Where(t => t.Layer == Layers.Dimensions)
            .Select(t => Read(page, sheet, TextMeasure.Box(t), t.Degrees != 0, t.Group!))];

    /// <summary>
    /// Millimetres are bare whole numbers; feet carry ', inches ", and a fraction stands behind a space (references/drawing.md A3).
    /// </summary>
    public static double Parse(string text)
    {
        if (Metric().IsMatch(text))
        {
            return double.Parse(text, CultureInfo.InvariantCulture);
        }

        var parts = Feet().Match(text);
        if (!parts.Success)
        {
            throw new FormatException($"'{text}' is no dimension");
        }

        double Part(int at) => parts.Groups[at].Success ? double.Parse(parts.Groups[at].Value, CultureInfo.InvariantCulture) : 0;
        double fraction = parts.Groups[3].Success ? Part(3) / Part(4) : parts.Groups[5].Success ? Part(5) / Part(6) : 0;
        return ((Part(1) * 12) + Part(2) + fraction) * Inch;
    }

    public static bool IsOne(string text) => Metric().IsMatch(text) || Feet().IsMatch(text);

    private static PrintedDimension Read(Page page, SheetScene sheet, PaperBox box, bool upright, string row)
    {
        var letters = page.Letters
            .Select(l => (
                l.Value,
                At: new PaperPoint(
                    (l.StartBaseLine.X + l.EndBaseLine.X) / 2 / PointsPerMm,
                    sheet.HeightMm - ((l.StartBaseLine.Y + l.EndBaseLine.Y) / 2 / PointsPerMm)), l.StartBaseLine, l.EndBaseLine))
            .Where(l => box.Holds(l.At)
                && (Math.Abs(l.EndBaseLine.X - l.StartBaseLine.X) < Math.Abs(l.EndBaseLine.Y - l.StartBaseLine.Y)) == upright)
            .OrderBy(l => upright ? -l.At.Y : l.At.X)
            .ToList();
        string text = string.Concat(letters.Select(l => l.Value)).Trim();
        var first = letters[0].StartBaseLine;
        var last = letters[^1].EndBaseLine;
        var centre = new PaperPoint((first.X + last.X) / 2 / PointsPerMm, sheet.HeightMm - ((first.Y + last.Y) / 2 / PointsPerMm));
        return new PrintedDimension(
            text, Parse(text), row, upright, centre, Math.Abs(upright ? last.Y - first.Y : last.X - first.X) / PointsPerMm);
    }

    [GeneratedRegex(@"^\d+$")]
    private static partial Regex Metric();

    [GeneratedRegex("""^(?:(\d+)'-)?(?:(\d{1,2})(?: (\d+)/(\d+))?|(\d+)/(\d+))"$""")]
    private static partial Regex Feet();
}
