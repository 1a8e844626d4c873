using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A window: thin lines of sill and glass along the wall.</summary>
public static class WindowSymbol
{
    public static void Draw(SymbolBrush brush, PaperBox reveal, bool alongX)
    {
        brush.Box(reveal, brush.Narrow);
        if (alongX)
        {
            brush.Line(new(reveal.Left, reveal.Centre.Y), new(reveal.Right, reveal.Centre.Y), brush.Narrow);
        }
        else
        {
            brush.Line(new(reveal.Centre.X, reveal.Top), new(reveal.Centre.X, reveal.Bottom), brush.Narrow);
        }
    }
}
