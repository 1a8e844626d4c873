using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A leaf that runs along the wall: drawn beside the hole, with an arrow the way it opens.</summary>
public static class SlidingDoorSymbol
{
    private const double ArrowLength = 1.6;

    public static void Draw(SymbolBrush brush, PaperPoint shutEnd, PaperPoint openEnd)
    {
        brush.Line(shutEnd, openEnd, brush.Symbol);
        var direction = PaperShapes.Towards(shutEnd, openEnd);
        var beside = PaperShapes.Times(PaperShapes.Left(direction), 1);
        var middle = PaperShapes.Between(shutEnd, openEnd, 0.5) + beside;
        var tip = middle + PaperShapes.Times(direction, ArrowLength);
        brush.Line(middle - PaperShapes.Times(direction, ArrowLength), tip, brush.Narrow);
        ArrowheadSymbol.Open(brush, tip, direction, 1);
    }
}
