using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A switch: a small circle with a slanted stroke (M).</summary>
public static class SwitchSymbol
{
    public static void Draw(SymbolBrush brush, PaperPoint centre, double radius)
    {
        brush.Circle(centre, radius * 0.7, brush.Symbol);
        double at = radius * 0.7 / Math.Sqrt(2);
        brush.Line(new(centre.X + at, centre.Y - at), new(centre.X + (radius * 1.7), centre.Y - (radius * 1.7)), brush.Symbol);
    }
}
