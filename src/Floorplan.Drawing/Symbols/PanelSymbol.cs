using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A distribution board: a rectangle, half filled (M).</summary>
public static class PanelSymbol
{
    public static void Draw(SymbolBrush brush, PaperBox box)
    {
        brush.Fill(box, Palette.White);
        brush.Fill(new(box.Left, box.Top), new(box.Right, box.Top), new(box.Left, box.Bottom));
        brush.Box(box, brush.Symbol);
    }
}
