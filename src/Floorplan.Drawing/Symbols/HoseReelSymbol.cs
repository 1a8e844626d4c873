using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A hose on its reel: rings and a tail.</summary>
public static class HoseReelSymbol
{
    public static void Draw(SymbolBrush brush, PaperPoint at, double radius)
    {
        brush.Fill(PaperShapes.Ellipse(at, radius, radius, 0), Palette.White);
        brush.Circle(at, radius, brush.Symbol);
        brush.Circle(at, radius * 0.5, brush.Narrow);
        brush.Path(brush.Symbol, new(at.X + radius, at.Y), new(at.X + radius, at.Y + (radius * 1.4)));
    }
}
