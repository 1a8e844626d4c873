using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Symbols.Services;

/// <summary>A switch: a small circle with a slanted stroke (M).</summary>
internal sealed class SwitchSymbol : ServiceSymbol<Switch>
{
    public override string Layer => Layers.Power;

    public override ServiceSheet Sheets => ServiceSheet.Power;

    protected override string Name(Switch point) => "switch";

    protected override PaperPoint Draw(SymbolBrush brush, Switch point, PaperPoint at, double size)
    {
        var off = OffWall(point, at);
        brush.Circle(off, Radius * 0.7, brush.Symbol);
        double edge = Radius * 0.7 / Math.Sqrt(2);
        brush.Line(new(off.X + edge, off.Y - edge), new(off.X + (Radius * 1.7), off.Y - (Radius * 1.7)), brush.Symbol);
        return off;
    }
}

internal static partial class ServiceSymbols
{
    private static readonly ServiceSymbol OfSwitch = Add(new SwitchSymbol());
}
