using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Symbols.Services;

/// <summary>A water point: a circle, filled for hot, open for cold, half filled for both.</summary>
internal sealed class WaterPointSymbol : ServiceSymbol<WaterPoint>
{
    public override string Layer => Layers.Water;

    public override ServiceSheet Sheets => ServiceSheet.Water;

    protected override string Name(WaterPoint point) => point switch
    {
        { Cold: true, Hot: true } => "water point, cold and hot",
        { Hot: true } => "water point, hot",
        _ => "water point, cold",
    };

    protected override PaperPoint Draw(SymbolBrush brush, WaterPoint point, PaperPoint at, double size)
    {
        var off = OffWall(point, at);
        var ring = PaperShapes.Ellipse(off, Radius, Radius, 0);
        brush.Fill(ring, Palette.White);
        if (point.Hot)
        {
            brush.Fill(point.Cold ? [.. ring.Take((ring.Count / 2) + 1)] : ring);
        }

        brush.Circle(off, Radius, brush.Symbol);
        return off;
    }
}

internal static partial class ServiceSymbols
{
    private static readonly ServiceSymbol OfWaterPoint = Add(new WaterPointSymbol());
}
