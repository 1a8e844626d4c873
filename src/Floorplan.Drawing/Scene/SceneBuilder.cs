using Floorplan.Drawing.Conventions;

namespace Floorplan.Drawing.Scene;

/// <summary>
/// Collects the items of one sheet. Hatches are kept back until the end, so that they can leave gaps for every text.
/// </summary>
/// <param name="denominator">The scale of the sheet's views is 1 to this; legend samples follow it.</param>
public sealed class SceneBuilder(double denominator = 1)
{
    private readonly List<SceneItem>[] _bands = [.. Enum.GetValues<Band>().Select(_ => new List<SceneItem>())];
    private readonly List<HatchArea> _hatches = [];

    public double Denominator => denominator;

    /// <summary>Where the datum of the first view that has one falls; null before.</summary>
    public PaperPoint? Datum { get; private set; }

    /// <summary>Several views have a datum each; that of the first is the sheet's.</summary>
    public void SetDatum(PaperPoint at) => Datum ??= at;

    /// <summary>Everything so far, in painting order, without hatches.</summary>
    public IEnumerable<SceneItem> Items => _bands.SelectMany(b => b);

    public IReadOnlyList<HatchArea> Hatches => _hatches;

    /// <summary>Of one band, in the order in which they were added; it only grows.</summary>
    internal IReadOnlyList<SceneItem> In(Band band) => _bands[(int)band];

    public void Add(SceneItem item, Band band) => _bands[(int)band].Add(item);

    public void Line(PaperPoint from, PaperPoint to, Pen pen, string layer, string? group = null, Band band = Band.Object) =>
        Add(new LineItem(from, to, pen, layer, group), band);

    public void Polyline(
        IReadOnlyList<PaperPoint> points, bool closed, Pen pen, string layer, string? group = null, Band band = Band.Object) =>
        Add(new PolylineItem(points, closed, pen, layer, group), band);

    public void Rectangle(PaperBox box, Pen pen, string layer, string? group = null, Band band = Band.Object) =>
        Polyline(Corners(box), true, pen, layer, group, band);

    public void Arc(
        PaperPoint centre, double radius, double startDegrees, double endDegrees, Pen pen, string layer, string? group = null,
        Band band = Band.Object) =>
        Add(new ArcItem(centre, radius, startDegrees, endDegrees, pen, layer, group), band);

    public void Circle(PaperPoint centre, double radius, Pen pen, string layer, string? group = null, Band band = Band.Object) =>
        Arc(centre, radius, 0, 360, pen, layer, group, band);

    public void Fill(
        IReadOnlyList<IReadOnlyList<PaperPoint>> rings, string colour, string layer, string? group = null, Band band = Band.Tint) =>
        Add(new AreaItem(rings, colour, layer, group), band);

    public void Fill(PaperBox box, string colour, string layer, string? group = null, Band band = Band.Tint) =>
        Fill([Corners(box)], colour, layer, group, band);

    /// <summary>Text whose place is fixed; the label placer keeps clear of it.</summary>
    public void Text(TextItem text) => Add(text, Band.Text);

    public void Hatch(IReadOnlyList<IReadOnlyList<PaperPoint>> rings, HatchStyle style, Pen pen, string layer, string? group = null) =>
        _hatches.Add(new HatchArea(rings, style, pen, layer, group));

    public void Hatch(PaperBox box, HatchStyle style, Pen pen, string layer, string? group = null)
        => Hatch([Corners(box)], style, pen, layer, group);

    /// <summary>Adds everything so far, cut to a window and then moved, to another scene.</summary>
    internal void CopyTo(SceneBuilder other, SceneCrop crop, PaperPoint by)
    {
        for (int band = 0; band < _bands.Length; band++)
        {
            other._bands[band].AddRange(_bands[band].SelectMany(crop.Cut).Select(i => i.Moved(by)));
        }

        other._hatches.AddRange(_hatches.Select(crop.Cut).OfType<HatchArea>().Select(h => h.Moved(by)));
        other.Datum ??= Datum + by;
    }

    private static PaperPoint[] Corners(PaperBox box) =>
        [new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)];
}

/// <summary>An area (even-odd rings) that will be hatched when the sheet is finished.</summary>
public sealed record HatchArea(IReadOnlyList<IReadOnlyList<PaperPoint>> Rings, HatchStyle Style, Pen Pen, string Layer, string? Group);
