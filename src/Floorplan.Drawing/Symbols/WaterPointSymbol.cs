using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A water point: a circle, filled for hot, open for cold, half filled for both.</summary>
public static class WaterPointSymbol
{
    public static void Draw(SymbolBrush brush, PaperPoint at, double radius, bool cold, bool hot)
    {
        brush.Fill(PaperShapes.Ellipse(at, radius, radius, 0), Palette.White);
        if (hot)
        {
            var ring = PaperShapes.Ellipse(at, radius, radius, 0);
            brush.Fill(cold ? [.. ring.Take((ring.Count / 2) + 1)] : ring);
        }

        brush.Circle(at, radius, brush.Symbol);
    }
}
