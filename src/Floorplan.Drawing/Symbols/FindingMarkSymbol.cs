using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>The place of a finding: a dot in a ring. Its number stands beside it as a label.</summary>
public static class FindingMarkSymbol
{
    public const double Radius = 1.3;

    public static void Draw(SymbolBrush brush, PaperPoint at)
    {
        brush.Circle(at, Radius, brush.Symbol);
        brush.Disc(at, Radius * 0.4);
    }
}
