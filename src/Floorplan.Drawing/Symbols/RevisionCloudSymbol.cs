using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>
/// A revision cloud: half circles bulging outwards along a rectangle, the usual mark round what changed (common practice, no source).
/// </summary>
public static class RevisionCloudSymbol
{
    /// <summary>About the width of one bulge, paper mm.</summary>
    private const double Bulge = 4;

    public static void Draw(SymbolBrush brush, PaperBox box, Pen pen)
    {
        Side(brush, new(box.Left, box.Top), new(box.Right, box.Top), 0, pen);
        Side(brush, new(box.Right, box.Top), new(box.Right, box.Bottom), 270, pen);
        Side(brush, new(box.Right, box.Bottom), new(box.Left, box.Bottom), 180, pen);
        Side(brush, new(box.Left, box.Bottom), new(box.Left, box.Top), 90, pen);
    }

    /// <param name="start">Where each half circle starts, in degrees counter-clockwise, so that it lies outside.</param>
    private static void Side(SymbolBrush brush, PaperPoint from, PaperPoint to, double start, Pen pen)
    {
        double length = PaperShapes.Length(to - from);
        int bulges = Math.Max(1, (int)Math.Round(length / Bulge));
        for (int i = 0; i < bulges; i++)
        {
            brush.Arc(PaperShapes.Between(from, to, (i + 0.5) / bulges), length / bulges / 2, start, start + 180, pen);
        }
    }
}
