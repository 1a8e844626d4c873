using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A pair of cargo doors, shut: two heavy leaves across the end, meeting in the middle, with a lock rod on each.</summary>
public static class CargoDoorSymbol
{
    private const double RodRadius = 0.5;

    public static void Draw(SymbolBrush brush, PaperPoint from, PaperPoint to)
    {
        var along = PaperShapes.Towards(from, to);
        var across = PaperShapes.Left(along);
        var middle = PaperShapes.Between(from, to, 0.5);
        brush.Line(from, to, new Pen(brush.Standard.Wide));
        brush.Line(middle - across, middle + across, brush.Symbol);
        foreach (double share in (double[])[0.25, 0.75])
        {
            brush.Circle(PaperShapes.Between(from, to, share), RodRadius, brush.Symbol);
        }
    }
}
