using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A round tank or pot: the lip inside its outline.</summary>
public static class RoundTankSymbol
{
    private const double Lip = 0.8;

    public static void Draw(SymbolBrush brush, PaperPoint centre, double radius)
    {
        if (radius > 2 * Lip)
        {
            brush.Circle(centre, radius - Lip, brush.Narrow);
        }
    }
}
