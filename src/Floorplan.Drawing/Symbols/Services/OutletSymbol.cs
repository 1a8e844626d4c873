using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Symbols.Services;

/// <summary>A socket outlet: half circle with its stem to the wall (F2 for the half circle, stem M).</summary>
internal sealed class OutletSymbol : ServiceSymbol<Outlet>
{
    public override string Layer => Layers.Power;

    public override ServiceSheet Sheets => ServiceSheet.Power;

    protected override string Name(Outlet point) => "outlet";

    protected override PaperPoint Draw(SymbolBrush brush, Outlet point, PaperPoint at, double size)
    {
        var into = point.Wall is null ? new PaperPoint(0, -1) : IntoRoom(point);
        var centre = at + PaperShapes.Times(into, Radius * 2);
        double facing = PaperShapes.Degrees(into);
        brush.Arc(centre, Radius, facing + 90, facing + 270, brush.Symbol);
        brush.Line(at, at + PaperShapes.Times(into, Radius), brush.Symbol);
        brush.Line(centre
            + PaperShapes.Times(PaperShapes.Left(into), Radius), centre - PaperShapes.Times(PaperShapes.Left(into), Radius), brush.Symbol);
        return OffWall(point, at);
    }
}

internal static partial class ServiceSymbols
{
    private static readonly ServiceSymbol OfOutlet = Add(new OutletSymbol());
}
