using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>One hinged leaf in its open place and the quarter circle that it sweeps.</summary>
public static class HingedDoorSymbol
{
    /// <param name="leafEnd">Free end of the leaf when open.</param>
    /// <param name="closedEnd">Free end of the leaf when shut.</param>
    public static void Draw(SymbolBrush brush, PaperPoint hinge, PaperPoint leafEnd, PaperPoint closedEnd)
    {
        brush.Line(hinge, leafEnd, brush.Symbol);
        double open = PaperShapes.Degrees(leafEnd - hinge);
        double shut = PaperShapes.Degrees(closedEnd - hinge);
        double turn = (open - shut + 360) % 360;
        double radius = PaperShapes.Length(leafEnd - hinge);
        if (turn <= 180)
        {
            brush.Arc(hinge, radius, shut, shut + turn, brush.Narrow);
        }
        else
        {
            brush.Arc(hinge, radius, open, open + 360 - turn, brush.Narrow);
        }
    }
}
