using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Symbols.Services;

/// <summary>A hose on its reel: rings and a tail, beside its water point, so that both are seen.</summary>
internal sealed class HoseSymbol : ServiceSymbol<Hose>
{
    public override string Layer => Layers.Water;

    public override ServiceSheet Sheets => ServiceSheet.Water;

    protected override string Name(Hose point) => "hose";

    protected override PaperPoint Draw(SymbolBrush brush, Hose point, PaperPoint at, double size)
    {
        var beside = OffWall(point, at) + PaperShapes.Times(PaperShapes.Left(IntoRoom(point)), 3 * Radius);
        brush.Fill(PaperShapes.Ellipse(beside, Radius, Radius, 0), Palette.White);
        brush.Circle(beside, Radius, brush.Symbol);
        brush.Circle(beside, Radius * 0.5, brush.Narrow);
        brush.Path(brush.Symbol, new(beside.X + Radius, beside.Y), new(beside.X + Radius, beside.Y + (Radius * 1.4)));
        return beside;
    }
}

internal static partial class ServiceSymbols
{
    private static readonly ServiceSymbol OfHose = Add(new HoseSymbol());
}
