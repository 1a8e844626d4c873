using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Dimensions;

/// <summary>
/// The dimension rows round one view, from the plan outwards in the order added; overall rows always end up outermost. Rows that
/// would repeat another row of their side are left out.
/// </summary>
/// <param name="extent">The outline that rows stand off from, in plan mm.</param>
public sealed class DimensionSet(Envelope extent, UnitSystem units, DrawingStandard standard)
{
    /// <summary>Kept free between an inner dimension's text and its ends, paper mm.</summary>
    private const double InnerMargin = 1;

    private readonly List<DimensionRow> rows = [];

    public void Add(DimensionRow row)
    {
        if (row.Stops.Select(s => s.Along).Distinct().Count() > 1 && !rows.Exists(r => r.Side == row.Side && SameStretches(r, row)))
        {
            rows.Add(row);
        }
    }

    /// <summary>Paper taken outside the extent on a side, in mm, at a scale.</summary>
    public double Depth(Side side, double denominator)
    {
        var laid = Lay(side, denominator);
        return laid.Count == 0 ? 0 : laid.Max(r => r.Outer);
    }

    /// <summary>Draws all rows; the text is fixed in the scene, so labels keep clear of it.</summary>
    public void Draw(SceneBuilder scene, PlanTransform transform)
    {
        foreach (var side in Enum.GetValues<Side>())
        {
            new RowPen(scene, transform, extent, side, standard).Draw(Lay(side, transform.Denominator));
        }
    }

    /// <summary>
    /// A dimension inside the view, from one point to another along x or y, drawn at once with its text in the middle; false when
    /// there is no room for its text.
    /// </summary>
    public bool DrawInner(SceneBuilder scene, PlanTransform transform, PlanPoint from, PlanPoint to, string? group = null)
    {
        bool upright = from.X == to.X;
        var length = Length.Abs(upright ? to.Y - from.Y : to.X - from.X);
        string text = LengthText.Dimension(length, units);
        double width = TextMeasure.Width(text, standard.NoteHeight);
        if (transform.Size(length) < width + (2 * InnerMargin))
        {
            return false;
        }

        var a = transform.ToPaper(from);
        var b = transform.ToPaper(to);
        var middle = new PaperPoint((a.X + b.X) / 2, (a.Y + b.Y) / 2);
        var at = upright ? middle - new PaperPoint(standard.DimensionTextGap, 0) : middle - new PaperPoint(0, standard.DimensionTextGap);
        var item = new TextItem(text, at, standard.NoteHeight, TextAnchor.Middle, Layers.Dimensions, group, upright ? 90 : 0);
        var box = TextMeasure.Box(item);
        if (scene.Items.OfType<TextItem>().Any(t => TextMeasure.Box(t).Overlaps(box)))
        {
            return false;
        }

        var pen = new Pen(standard.Narrow);
        scene.Line(a, b, pen, Layers.Dimensions, group, Band.Annotation);
        RowPen.Tick(scene, a, standard, group);
        RowPen.Tick(scene, b, standard, group);
        scene.Text(item);
        return true;
    }

    private List<LaidRow> Lay(Side side, double denominator)
    {
        var ordered = rows.Where(r => r.Side == side).OrderBy(r => r.Form == DimensionForm.Overall).ToList();
        var laid = new List<LaidRow>();
        bool textOutward = side is Side.North or Side.West;
        double at = standard.FirstRow;
        foreach (var row in ordered)
        {
            var texts = RowLayout.Texts(row, denominator, units, standard);
            double above = RowLayout.Above(texts, standard);
            double line = textOutward || laid.Count == 0 && above <= RowLayout.BaseAbove(standard) ? at : at + above - RowLayout.BaseAbove(standard);
            double outer = line + (textOutward ? above : standard.ExtensionOvershoot + standard.SmallestGap);
            laid.Add(new LaidRow(row, texts, line, outer));
            at = textOutward ? line + Math.Max(standard.RowPitch, above + standard.ExtensionOvershoot) : line + standard.RowPitch;
        }

        return laid;
    }

    private static bool SameStretches(DimensionRow a, DimensionRow b) =>
        a.Form == b.Form && a.Stops.Select(s => s.Along).ToHashSet().SetEquals(b.Stops.Select(s => s.Along));
}

/// <param name="Line">Distance of the dimension line from the extent, paper mm.</param>
/// <param name="Outer">Distance of all that belongs to the row.</param>
internal sealed record LaidRow(DimensionRow Row, IReadOnlyList<RowText> Texts, double Line, double Outer);
