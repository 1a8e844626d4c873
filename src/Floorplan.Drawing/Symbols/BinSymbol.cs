using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A bin: the rim inside its outline.</summary>
public static class BinSymbol
{
    private const double Rim = 0.8;

    public static void Draw(SymbolBrush brush, PaperBox outline)
    {
        if (outline.Width > 3 * Rim && outline.Height > 3 * Rim)
        {
            brush.Box(outline.Grown(-Rim), brush.Narrow);
        }
    }
}
