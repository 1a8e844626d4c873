using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>An air opening: louvre blades across the wall.</summary>
public static class VentSymbol
{
    private const double Pitch = 1;

    public static void Draw(SymbolBrush brush, PaperBox reveal, bool alongX)
    {
        brush.Box(reveal, brush.Narrow);
        double length = alongX ? reveal.Width : reveal.Height;
        int blades = Math.Max(2, (int)(length / Pitch));
        for (int i = 1; i < blades; i++)
        {
            double at = length * i / blades;
            if (alongX)
            {
                brush.Line(new(reveal.Left + at, reveal.Top), new(reveal.Left + at, reveal.Bottom), brush.Narrow);
            }
            else
            {
                brush.Line(new(reveal.Left, reveal.Top + at), new(reveal.Right, reveal.Top + at), brush.Narrow);
            }
        }
    }
}
