using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>The way the floor falls: a thin arrow that points down the slope.</summary>
public static class FallArrowSymbol
{
    private const double Head = 2;

    public static void Draw(SymbolBrush brush, PaperPoint from, PaperPoint to)
    {
        brush.Line(from, to, brush.Narrow);
        ArrowheadSymbol.Open(brush, to, PaperShapes.Towards(from, to), Head);
    }
}
