using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>The steel datum: an open circle with a cross through it.</summary>
public static class DatumSymbol
{
    private const double Radius = 1.5;
    private const double Arm = 2.6;

    public static void Draw(SymbolBrush brush, PaperPoint at)
    {
        brush.Circle(at, Radius, brush.Narrow);
        brush.Line(new(at.X - Arm, at.Y), new(at.X + Arm, at.Y), brush.Narrow);
        brush.Line(new(at.X, at.Y - Arm), new(at.X, at.Y + Arm), brush.Narrow);
    }
}
