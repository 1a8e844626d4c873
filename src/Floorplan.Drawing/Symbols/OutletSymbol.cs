using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A socket outlet: half circle with its stem to the wall (F2 for the half circle, stem M).</summary>
public static class OutletSymbol
{
    /// <param name="intoRoom">Unit vector on paper, away from the wall.</param>
    public static void Draw(SymbolBrush brush, PaperPoint at, PaperPoint intoRoom, double radius)
    {
        var centre = at + PaperShapes.Times(intoRoom, radius * 2);
        double facing = PaperShapes.Degrees(intoRoom);
        brush.Arc(centre, radius, facing + 90, facing + 270, brush.Symbol);
        brush.Line(at, at + PaperShapes.Times(intoRoom, radius), brush.Symbol);
        brush.Line(centre + PaperShapes.Times(PaperShapes.Left(intoRoom), radius), centre - PaperShapes.Times(PaperShapes.Left(intoRoom), radius), brush.Symbol);
    }
}
