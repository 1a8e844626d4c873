using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A spot level: a small cross at the place that is measured (M).</summary>
public static class LevelMarkSymbol
{
    private const double Half = 0.9;

    public static void Draw(SymbolBrush brush, PaperPoint at)
    {
        brush.Line(new(at.X - Half, at.Y), new(at.X + Half, at.Y), brush.Symbol);
        brush.Line(new(at.X, at.Y - Half), new(at.X, at.Y + Half), brush.Symbol);
    }
}
