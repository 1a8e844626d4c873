using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>Hanging strips: a row of short strokes across the hole.</summary>
public static class StripCurtainSymbol
{
    private const double Pitch = 1.2;
    private const double Stroke = 0.9;

    public static void Draw(SymbolBrush brush, PaperPoint from, PaperPoint to)
    {
        var along = PaperShapes.Towards(from, to);
        var across = PaperShapes.Times(PaperShapes.Left(along), Stroke / 2);
        double length = PaperShapes.Length(to - from);
        int strips = Math.Max(2, (int)(length / Pitch));
        for (int i = 0; i < strips; i++)
        {
            var at = from + PaperShapes.Times(along, length * (i + 0.5) / strips);
            brush.Line(at - across, at + across, brush.Symbol);
        }
    }
}
