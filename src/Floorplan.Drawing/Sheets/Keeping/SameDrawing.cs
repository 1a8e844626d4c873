using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Sheets.Keeping;

/// <summary>
/// Whether two things of a sheet are drawn alike. Records are compared whole, but for their lists, which are equal only as objects and so
/// are compared one by one: a property that is added later counts.
/// </summary>
internal static class SameDrawing
{
    private static readonly IReadOnlyList<PaperPoint> noPoints = [];
    private static readonly IReadOnlyList<IReadOnlyList<PaperPoint>> noRings = [];
    private static readonly Pen noPen = new(0);

    public static bool Item(SceneItem a, SceneItem b) => ReferenceEquals(a, b) || (a, b) switch
    {
        (TextItem s, TextItem t) => s == t,
        (LineItem s, LineItem t) => Same(s.Pen, t.Pen) && s with { Pen = noPen } == t with { Pen = noPen },
        (ArcItem s, ArcItem t) => Same(s.Pen, t.Pen) && s with { Pen = noPen } == t with { Pen = noPen },
        (PolylineItem s, PolylineItem t) => Same(s.Pen, t.Pen) && s.Points.SequenceEqual(t.Points)
            && s with { Pen = noPen, Points = noPoints } == t with { Pen = noPen, Points = noPoints },
        (AreaItem s, AreaItem t) => Same(s.Rings, t.Rings) && s with { Rings = noRings } == t with { Rings = noRings },
        _ => false,
    };

    public static bool Hatch(HatchArea a, HatchArea b) => Same(a.Pen, b.Pen) && Same(a.Rings, b.Rings)
        && a with { Pen = noPen, Rings = noRings } == b with { Pen = noPen, Rings = noRings };

    /// <summary>All but their figures.</summary>
    public static bool Label(LabelRequest a, LabelRequest b) => a.Lines.SequenceEqual(b.Lines) && a.Positions.SequenceEqual(b.Positions)
        && a.OtherTargets.SequenceEqual(b.OtherTargets)
        && Bare(a) == Bare(b);

    public static bool Area(LabelArea a, LabelArea b) => Same(a.Rings, b.Rings) && a with { Rings = noRings } == b with { Rings = noRings };

    /// <summary>All but the figures that it prints.</summary>
    public static bool Table(KeyTable a, KeyTable b) =>
        a.Title == b.Title
        && a.Columns.SequenceEqual(b.Columns)
        && a.Rows.Count == b.Rows.Count
        && a.Rows.Zip(b.Rows).All(r => r.First.Select(c => c.Text).SequenceEqual(r.Second.Select(c => c.Text)));

    public static IReadOnlyList<Cell> Cells(IEnumerable<KeyTable> tables) => [.. tables.SelectMany(t => t.Rows).SelectMany(r => r)];

    private static LabelRequest Bare(LabelRequest label) => label with { Lines = [], Positions = [], OtherTargets = [], Figures = [] };

    private static bool Same(IReadOnlyList<IReadOnlyList<PaperPoint>> a, IReadOnlyList<IReadOnlyList<PaperPoint>> b) =>
        a.Count == b.Count && a.Zip(b).All(r => r.First.SequenceEqual(r.Second));

    private static bool Same(Pen a, Pen b) => ReferenceEquals(a, b)
        || (a with { Dash = null } == b with { Dash = null }
            && (a.Dash is null || b.Dash is null ? a.Dash is null && b.Dash is null : a.Dash.SequenceEqual(b.Dash)));
}
