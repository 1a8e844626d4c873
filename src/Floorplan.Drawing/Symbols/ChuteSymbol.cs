using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A chute: its two cheeks through the wall and an arrow the way things slide.</summary>
public static class ChuteSymbol
{
    private const double Proud = 1.5;

    /// <param name="direction">Unit vector from the upper to the lower end.</param>
    public static void Draw(SymbolBrush brush, PaperBox reveal, PaperPoint direction)
    {
        bool throughY = Math.Abs(direction.Y) > Math.Abs(direction.X);
        var cheeks = throughY
            ? new PaperBox(reveal.Left, reveal.Top - Proud, reveal.Right, reveal.Bottom + Proud)
            : new PaperBox(reveal.Left - Proud, reveal.Top, reveal.Right + Proud, reveal.Bottom);
        brush.Box(cheeks, brush.Narrow);
        double half = ((throughY ? cheeks.Height : cheeks.Width) / 2) - 0.4;
        var tip = cheeks.Centre + PaperShapes.Times(direction, half);
        brush.Line(cheeks.Centre - PaperShapes.Times(direction, half), tip, brush.Narrow);
        ArrowheadSymbol.Open(brush, tip, direction, 1);
    }
}
