using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A roll-up door: the drum over the hole, dashed because it is above the cut.</summary>
public static class RollUpDoorSymbol
{
    public static void Draw(SymbolBrush brush, PaperBox drum) => brush.Box(drum, brush.Dashed);
}
