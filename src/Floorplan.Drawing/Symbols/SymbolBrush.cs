using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>What a symbol is drawn with: the scene, line widths, and the layer, group and band that all its items go to.</summary>
public sealed record SymbolBrush(SceneBuilder Scene, DrawingStandard Standard, string Layer, string? Group = null, Band Band = Band.Object)
{
    public string Colour { get; init; } = Palette.Black;

    public Pen Narrow => new(Standard.Narrow, Colour);

    public Pen Symbol => new(Standard.Text, Colour);

    public Pen Dashed => new(Standard.Narrow, Colour, Dashes.Dashed(Standard.Narrow));

    public void Line(PaperPoint from, PaperPoint to, Pen pen) => Scene.Line(from, to, pen, Layer, Group, Band);

    public void Path(Pen pen, params IReadOnlyList<PaperPoint> points) => Scene.Polyline(points, false, pen, Layer, Group, Band);

    public void Ring(Pen pen, params IReadOnlyList<PaperPoint> points) => Scene.Polyline(points, true, pen, Layer, Group, Band);

    public void Box(PaperBox box, Pen pen) => Scene.Rectangle(box, pen, Layer, Group, Band);

    public void Circle(PaperPoint centre, double radius, Pen pen) => Scene.Circle(centre, radius, pen, Layer, Group, Band);

    public void Arc(PaperPoint centre, double radius, double startDegrees, double endDegrees, Pen pen) =>
        Scene.Arc(centre, radius, startDegrees, endDegrees, pen, Layer, Group, Band);

    public void Fill(params IReadOnlyList<PaperPoint> ring) => Scene.Fill([ring], Colour, Layer, Group, Band);

    public void Fill(PaperBox box, string colour) => Scene.Fill(box, colour, Layer, Group, Band);

    public void Fill(IReadOnlyList<PaperPoint> ring, string colour) => Scene.Fill([ring], colour, Layer, Group, Band);

    /// <summary>A filled disc, as a polygon of enough sides to look round at this size.</summary>
    public void Disc(PaperPoint centre, double radius) => Fill(PaperShapes.Ellipse(centre, radius, radius, 0));
}
