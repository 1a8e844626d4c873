using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Syntax;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Dimensions;

/// <summary>Draws the laid rows of one side of the view.</summary>
internal sealed class RowPen(SceneBuilder scene, PlanTransform transform, Envelope extent, Side side, DrawingStandard standard)
{
    /// <summary>Kept free round a text that breaks a line, paper mm.</summary>
    private const double TextClearance = 0.4;

    private readonly List<PaperBox> texts = [];
    private readonly bool upright = side is Side.East or Side.West;
    private readonly Pen narrow = new(standard.Narrow);
    private readonly RowPlaces places = new(transform, extent, side, standard);

    /// <summary>Texts first, so that extension lines of outer rows can leave gaps for the texts of inner ones.</summary>
    public void Draw(IReadOnlyList<LaidRow> rows)
    {
        foreach (var row in rows)
        {
            foreach (var text in row.Texts)
            {
                Text(row, text);
            }
        }

        foreach (var row in rows)
        {
            Lines(row);
        }
    }

    private void Lines(LaidRow row)
    {
        double[] stops = [.. row.Row.Stops.Select(s => s.Along.Millimetres).Distinct().Order()];
        double[] drawn = row.Row.Form == DimensionForm.Overall ? [stops[0], stops[^1]] : stops;
        scene.Line(At(drawn[0], row.Line), At(drawn[^1], row.Line), narrow, Layers.Dimensions, row.Row.Group, Band.Annotation);
        for (int i = 0; i < drawn.Length; i++)
        {
            var from = row.Row.Stops.First(s => s.Along.Millimetres.Equals(drawn[i]));
            Extension(At(drawn[i], Start(from)), At(drawn[i], row.Line + standard.ExtensionOvershoot), row.Row.Group);
            End(row.Row, drawn, i, row.Line);
        }
    }

    /// <summary>An extension line, broken where a text stands in its way.</summary>
    private void Extension(PaperPoint from, PaperPoint to, string? group)
    {
        double length = upright ? to.X - from.X : to.Y - from.Y;
        var gaps = texts.Where(t => t.IsCutBy(from, to))
            .Select(t => upright
                ? (Low: (t.Left - from.X) / length, High: (t.Right - from.X) / length)
                : (Low: (t.Top - from.Y) / length, High: (t.Bottom - from.Y) / length))
            .Select(g => (Low: Math.Min(g.Low, g.High), High: Math.Max(g.Low, g.High)))
            .OrderBy(g => g.Low);
        double done = 0;
        foreach (var (low, high) in gaps)
        {
            Piece(done, low);
            done = Math.Max(done, high);
        }

        Piece(done, 1);

        void Piece(double a, double b)
        {
            if (b > a)
            {
                scene.Line(Share(from, to, a), Share(from, to, b), narrow, Layers.Dimensions, group, Band.Annotation);
            }
        }
    }

    private static PaperPoint Share(PaperPoint from, PaperPoint to, double share) =>
        new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));

    public static void Tick(SceneBuilder scene, PaperPoint at, DrawingStandard standard, string? group)
    {
        var (from, to) = TickEnds(at, standard);
        scene.Line(from, to, new Pen(standard.Text), Layers.Dimensions, group, Band.Annotation);
    }

    /// <summary>Of the stroke at a place.</summary>
    public static (PaperPoint From, PaperPoint To) TickEnds(PaperPoint at, DrawingStandard standard)
    {
        double half = standard.Tick / 2 / Math.Sqrt(2);
        return (at + new PaperPoint(-half, half), at + new PaperPoint(half, -half));
    }

    private void End(DimensionRow row, double[] stops, int index, double line)
    {
        var at = At(stops[index], line);
        if (row.Form == DimensionForm.Running && index == (row.FromEnd ? stops.Length - 1 : 0))
        {
            scene.Circle(at, standard.OriginDiameter / 2, narrow, Layers.Dimensions, row.Group, Band.Annotation);
            return;
        }

        double before = index == 0 ? double.PositiveInfinity : transform.Size(stops[index] - stops[index - 1]);
        double after = index == stops.Length - 1 ? double.PositiveInfinity : transform.Size(stops[index + 1] - stops[index]);
        if (index > 0 && index < stops.Length - 1 && Math.Min(before, after) < standard.Tick)
        {
            scene.Circle(at, standard.DotDiameter / 4, new Pen(standard.DotDiameter / 2), Layers.Dimensions, row.Group, Band.Annotation);
            return;
        }

        Tick(scene, at, standard, row.Group);
    }

    private void Text(LaidRow row, RowText text)
    {
        if (text.Level > 0)
        {
            var (foot, end) = places.Leader(row, text);
            scene.Line(foot, end, new Pen(standard.Fine), Layers.Dimensions, row.Row.Group, Band.Annotation);
        }

        var item = places.Text(row, text);
        scene.Text(item);
        texts.Add(TextMeasure.Box(item).Grown(TextClearance));
    }

    /// <summary>Where an extension line begins: at the edge of the view, or nearer when the stop says so, with the gap.</summary>
    private double Start(DimensionStop stop)
    {
        if (stop.From is not { } from)
        {
            return standard.ExtensionGap;
        }

        double inward = side switch
        {
            Side.North => extent.MaxY - from.Millimetres,
            Side.South => from.Millimetres - extent.MinY,
            Side.East => extent.MaxX - from.Millimetres,
            _ => from.Millimetres - extent.MinX,
        };
        return standard.ExtensionGap - transform.Size(inward);
    }

    private PaperPoint At(double along, double outward) => places.At(along, outward);
}
