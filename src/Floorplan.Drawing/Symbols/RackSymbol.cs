using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>Shelves or a rack: short corner strokes mark the uprights, one line the back.</summary>
public static class RackSymbol
{
    private const double Upright = 1.2;

    public static void Draw(SymbolBrush brush, PaperBox outline)
    {
        double size = Math.Min(Upright, Math.Min(outline.Width, outline.Height) / 3);
        foreach (
            var (x, y) in ((double, double)[])[
                (outline.Left, outline.Top), (outline.Right - size, outline.Top), (outline.Left, outline.Bottom - size),
                (outline.Right - size, outline.Bottom - size)])
        {
            brush.Box(PaperBox.At(new(x, y), size, size), brush.Narrow);
        }
    }
}
