using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>Arrowheads: filled for streams, open for swings, falls and chutes.</summary>
public static class ArrowheadSymbol
{
    private const double HalfWidthShare = 0.35;

    public static void Filled(SymbolBrush brush, PaperPoint tip, PaperPoint direction, double length)
    {
        var foot = tip - PaperShapes.Times(direction, length);
        var half = PaperShapes.Times(PaperShapes.Left(direction), length * HalfWidthShare);
        brush.Fill(tip, foot + half, foot - half);
    }

    public static void Open(SymbolBrush brush, PaperPoint tip, PaperPoint direction, double length)
    {
        var foot = tip - PaperShapes.Times(direction, length);
        var half = PaperShapes.Times(PaperShapes.Left(direction), length * HalfWidthShare);
        brush.Path(brush.Narrow, foot + half, tip, foot - half);
    }
}
