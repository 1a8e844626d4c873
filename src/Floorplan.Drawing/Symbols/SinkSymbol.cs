using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A basin seen from above: bowl and waste. A hand sink has a round bowl, any other sink a square one.</summary>
public static class SinkSymbol
{
    private const double RimShare = 0.14;
    private const double WasteRadius = 0.4;

    public static void Draw(SymbolBrush brush, PaperBox outline, bool hand)
    {
        double rim = Math.Min(outline.Width, outline.Height) * RimShare;
        var bowl = outline.Grown(-rim);
        if (hand)
        {
            brush.Ring(brush.Narrow, PaperShapes.Ellipse(bowl.Centre, bowl.Width / 2, bowl.Height / 2, 0));
        }
        else
        {
            brush.Box(bowl, brush.Narrow);
        }

        brush.Circle(bowl.Centre, WasteRadius, brush.Narrow);
    }
}
