using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>An opening without a leaf: its head above the cut, dashed along both faces of the wall.</summary>
public static class OpeningSymbol
{
    public static void Draw(SymbolBrush brush, PaperBox reveal, bool alongX)
    {
        if (alongX)
        {
            brush.Line(new(reveal.Left, reveal.Top), new(reveal.Right, reveal.Top), brush.Dashed);
            brush.Line(new(reveal.Left, reveal.Bottom), new(reveal.Right, reveal.Bottom), brush.Dashed);
        }
        else
        {
            brush.Line(new(reveal.Left, reveal.Top), new(reveal.Left, reveal.Bottom), brush.Dashed);
            brush.Line(new(reveal.Right, reveal.Top), new(reveal.Right, reveal.Bottom), brush.Dashed);
        }
    }
}
