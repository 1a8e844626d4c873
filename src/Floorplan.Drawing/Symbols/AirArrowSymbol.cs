using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>Air brought in or drawn out: an arrow with a closed head, down into the room or up out of it.</summary>
public static class AirArrowSymbol
{
    public const double Height = 6;
    private const double Head = 2.4;

    public static void Draw(SymbolBrush brush, PaperPoint centre, bool supply)
    {
        var up = new PaperPoint(0, -Height / 2);
        var (from, to) = supply ? (centre + up, centre - up) : (centre - up, centre + up);
        brush.Line(from, to, brush.Symbol);
        ArrowheadSymbol.Open(brush, to, PaperShapes.Towards(from, to), Head);
    }
}
