using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A pass-through above the floor: its sill seen from above, with the two diagonals of a hole right through.</summary>
public static class HatchSymbol
{
    public static void Draw(SymbolBrush brush, PaperBox reveal)
    {
        brush.Box(reveal, brush.Narrow);
        brush.Line(new(reveal.Left, reveal.Top), new(reveal.Right, reveal.Bottom), brush.Narrow);
        brush.Line(new(reveal.Left, reveal.Bottom), new(reveal.Right, reveal.Top), brush.Narrow);
    }
}
