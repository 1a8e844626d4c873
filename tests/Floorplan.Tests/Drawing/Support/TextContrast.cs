using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>How far every text of a finished sheet stands out from the areas under it.</summary>
internal static class TextContrast
{
    /// <summary>WCAG 2.2, success criterion 1.4.3, for text of any size.</summary>
    private const double Least = 4.5;

    /// <summary>One sentence for each text that is too faint where it stands.</summary>
    public static IReadOnlyList<string> Faults(SheetScene sheet)
    {
        var under = new STRtree<(int Order, AreaItem Area)>();
        for (int i = 0; i < sheet.Items.Count; i++)
        {
            if (sheet.Items[i] is AreaItem area)
            {
                under.Insert(EnvelopeOf(area), (i, area));
            }
        }

        under.Build();
        return
        [
            .. sheet.Items.Select((item, order) => (Text: item as TextItem, order)).Where(t => t.Text is not null)
                .SelectMany(t => Points(TextMeasure.Box(t.Text!)).Select(p => Ground(under, p, t.order)).Distinct()
                    .Select(ground => (Text: t.Text!, Ground: ground)))
                .Where(t => Between(t.Text.Colour, t.Ground) < Least)
                .Select(t => FormattableString.Invariant(
                    $"{sheet.Name}: \"{t.Text.Text}\" {t.Text.Colour} on {t.Ground}: {Between(t.Text.Colour, t.Ground):0.00}")),
        ];
    }

    private static IEnumerable<Coordinate> Points(PaperBox box) =>
        from i in Enumerable.Range(0, 9)
        from k in Enumerable.Range(0, 3)
        select new Coordinate(box.Left
            + (box.Width * (i + 0.5) / 9), box.Top + (box.Height * (k + 0.5) / 3));

    private static string Ground(STRtree<(int Order, AreaItem Area)> under, Coordinate at, int below) =>
        under.Query(new Envelope(at)).Where(a => a.Order < below && Covers(a.Area, at)).OrderByDescending(a => a.Order)
            .Select(a => a.Area.Fill).FirstOrDefault("#FFFFFF");

    private static Envelope EnvelopeOf(AreaItem area)
    {
        var box = PaperBox.Of(area.Rings);
        return new Envelope(box.Left, box.Right, box.Top, box.Bottom);
    }

    private static bool Covers(AreaItem area, Coordinate at) => area.Rings.Count(r => r.Count > 2
        && NetTopologySuite.Algorithm.PointLocation.IsInRing(at, [.. r.Append(r[0]).Select(p => new Coordinate(p.X, p.Y))])) % 2 == 1;

    public static double Between(string a, string b)
    {
        double[] both = [.. new[] { Luminance(a), Luminance(b) }.Order()];
        return (both[1] + 0.05) / (both[0] + 0.05);
    }

    /// <summary>Relative luminance of WCAG 2.2.</summary>
    private static double Luminance(string colour)
    {
        double Part(int at)
        {
            double value = Convert.ToInt32(colour.Substring(at, 2), 16) / 255.0;
            return value <= 0.04045 ? value / 12.92 : Math.Pow((value + 0.055) / 1.055, 2.4);
        }

        return (0.2126 * Part(1)) + (0.7152 * Part(3)) + (0.0722 * Part(5));
    }

    /// <summary>L* of CIE 1976, 0 to 100.</summary>
    public static double Lightness(string colour) => Luminance(colour) is var y && y > 0.008856 ? (116 * Math.Cbrt(y)) - 16 : 903.3 * y;
}
