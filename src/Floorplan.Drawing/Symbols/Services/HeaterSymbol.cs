using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Symbols.Services;

/// <summary>A water heater: a circle with a wave across.</summary>
internal sealed class HeaterSymbol : ServiceSymbol<Heater>
{
    private const double Large = Radius * 1.5;

    public override string Layer => Layers.Water;

    public override ServiceSheet Sheets => ServiceSheet.Water | ServiceSheet.Power;

    protected override string Name(Heater point) => "water heater";

    protected override PaperPoint Draw(SymbolBrush brush, Heater point, PaperPoint at, double size)
    {
        var off = OffWall(point, at);
        brush.Fill(PaperShapes.Ellipse(off, Large, Large, 0), Palette.White);
        brush.Circle(off, Large, brush.Symbol);
        double step = Large / 2;
        brush.Path(
            brush.Narrow, new(off.X - Large, off.Y), new(off.X - step, off.Y - step), new(off.X, off.Y), new(off.X + step, off.Y + step),
            new(off.X + Large, off.Y));
        return off;
    }
}

internal static partial class ServiceSymbols
{
    private static readonly ServiceSymbol OfHeater = Add(new HeaterSymbol());
}
