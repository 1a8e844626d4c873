using System.Runtime.CompilerServices;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>
/// Measures a finished sheet by means other than the label placer's: text against text, against heavy lines and dark areas, and
/// against the frame. One sentence for each fault.
/// </summary>
internal static class SceneAudit
{
    /// <summary>Touching by less than this is not seen (paper mm).</summary>
    private const double Unseen = 0.05;

    private static readonly GeometryFactory Factory = new();

    /// <summary>A sheet is measured as several programs draw its texts, and its lines stay.</summary>
    private static readonly ConditionalWeakTable<SheetScene, List<(SceneItem Item, Geometry Shape)>> HeavyOf = [];

    public static IReadOnlyList<string> Faults(SheetScene sheet)
        => Faults(sheet, [.. sheet.Items.OfType<TextItem>().Select(t => ToPolygon(TextMeasure.Box(t)))]);

    /// <param name="boxes">What each text of the sheet takes, in their order.</param>
    public static IReadOnlyList<string> Faults(SheetScene sheet, IReadOnlyList<Geometry> boxes)
    {
        var texts = sheet.Items.OfType<TextItem>().Zip(boxes, (t, b) => (Text: t, Whole: b, Box: b.Buffer(-Unseen))).ToList();
        var faults = new List<string>();
        var index = new STRtree<int>();
        for (var i = 0; i < texts.Count; i++)
        {
            index.Insert(texts[i].Box.EnvelopeInternal, i);
        }

        foreach (var (i, other) in texts.SelectMany((t, i) => index.Query(t.Box.EnvelopeInternal).Where(k => k > i).Select(k => (i, k)))
            .Order())
        {
            if (texts[i].Box.Intersects(texts[other].Box))
            {
                faults.Add($"{Say(texts[i].Text)} and {Say(texts[other].Text)} overlap");
            }
        }

        foreach (var (item, shape) in HeavyOf.GetValue(sheet, s => [.. Shapes(s)]))
        {
            foreach (int i in index.Query(shape.EnvelopeInternal).Order())
            {
                if (!IsSign(texts[i].Text, item) && shape.Intersects(texts[i].Box))
                {
                    faults.Add($"{Say(texts[i].Text)} is cut by {item.GetType().Name} on {item.Layer} {item.Group}");
                }
            }
        }

        return [.. faults, .. OutsideFrame(sheet, [.. texts.Select(t => (t.Text, t.Whole))])];
    }

    private static IEnumerable<string> OutsideFrame(SheetScene sheet, IReadOnlyList<(TextItem Text, Geometry Box)> texts)
    {
        // A picture for a page has no frame but its own edge.
        var frame = sheet.Items.OfType<PolylineItem>().Where(p => p.Closed && p.Layer == Layers.TitleBlock)
            .Select(p => (p.Pen.Width, Box: PaperBox.Of(p.Points)))
            .OrderByDescending(p => p.Width).ThenByDescending(p => p.Box.Width).Select(p => p.Box)
                .FirstOrDefault(new PaperBox(0, 0, sheet.WidthMm, sheet.HeightMm));
        return texts.Where(t => t.Text.Group != "frame" && !frame.Holds(ToBox(t.Box)))
            .Select(t => $"{Say(t.Text)} leaves the frame");
    }

    private static IEnumerable<(SceneItem Item, Geometry Shape)> Shapes(SheetScene sheet)
    {
        foreach (var item in sheet.Items)
        {
            if (Heavy(item) is { } shape)
            {
                yield return (item, shape);
            }
        }
    }

    // Heavy lines as thin polygons along their middle; a text may come near a heavy line but not over it.
    private static Geometry? Heavy(SceneItem item)
    {
        double from = DrawingStandard.Iso.HeavyFrom;
        switch (item)
        {
            case LineItem { Pen.Width: var width } line when width >= from:
                return Factory.CreateLineString([C(line.From), C(line.To)]).Buffer(width / 2);
            case PolylineItem { Pen.Width: var width } line when width >= from && line.Points.Count > 1:
                var points = line.Points.Select(C).ToList();
                return Factory.CreateLineString([.. line.Closed ? points.Append(points[0]) : points]).Buffer(width / 2);
            case ArcItem { Pen.Width: var width } arc when width >= from:
                return Factory.CreateLineString(
                [
                    .. Enumerable.Range(0, 49).Select(i =>
                    {
                        double at = (arc.StartDegrees + ((arc.EndDegrees - arc.StartDegrees) * i / 48)) * Math.PI / 180;
                        return new Coordinate(arc.Centre.X + (arc.Radius * Math.Cos(at)), arc.Centre.Y - (arc.Radius * Math.Sin(at)));
                    }),
                ]).Buffer(width / 2);
            case AreaItem area when IsDark(area.Fill):
                Geometry? all = null;
                foreach (var ring in area.Rings.Where(r => r.Count > 2))
                {
                    var polygon = Factory.CreatePolygon([.. ring.Select(C), C(ring[0])]).Buffer(0);
                    all = all is null ? polygon : all.SymmetricDifference(polygon);
                }

                return all;
            default:
                return null;
        }
    }

    // The exclamation mark of a safety sign stands on its yellow by design (ISO 3864-1 general warning sign).
    private static bool IsSign(TextItem text, SceneItem item) => text.Layer == Layers.SafetySign && item.Layer == Layers.SafetySign;

    // Mean of the parts below three quarters: black text on it is hard to read.
    private static bool IsDark(string colour) =>
        (Convert.ToInt32(colour[1..3], 16) + Convert.ToInt32(colour[3..5], 16) + Convert.ToInt32(colour[5..7], 16)) / 3.0 < 255 * 0.7;

    private static Polygon ToPolygon(PaperBox box) => (Polygon)Factory.ToGeometry(new Envelope(box.Left, box.Right, box.Top, box.Bottom));

    private static PaperBox ToBox(Geometry shape)
    {
        var around = shape.EnvelopeInternal;
        return new PaperBox(around.MinX, around.MinY, around.MaxX, around.MaxY);
    }

    private static Coordinate C(PaperPoint p) => new(p.X, p.Y);

    private static string Say(TextItem text) => FormattableString.Invariant($"\"{text.Text}\" at {text.At.X:0.#}, {text.At.Y:0.#}");
}
