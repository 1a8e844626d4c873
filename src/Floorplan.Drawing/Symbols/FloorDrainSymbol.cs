using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A point drain in the floor: square frame, round grate. Sources differ on this symbol, so the sheet always letters it.</summary>
public static class FloorDrainSymbol
{
    public static void Draw(SymbolBrush brush, PaperPoint at, double size)
    {
        var frame = PaperBox.Around(at, size, size);
        brush.Fill(frame, Palette.White);
        brush.Box(frame, brush.Symbol);
        brush.Circle(at, size * 0.35, brush.Narrow);
        brush.Disc(at, size * 0.12);
    }
}
