using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Symbols.Services;

/// <summary>A hole for a pipe, a cable or a fan: a circle with a cross. Sheet 6 draws its true outline.</summary>
internal sealed class HoleSymbol : ServiceSymbol<Hole>
{
    public override string Layer => Layers.Opening;

    public override ServiceSheet Sheets => ServiceSheet.None;

    protected override string Name(Hole point) => "hole";

    protected override PaperPoint Draw(SymbolBrush brush, Hole point, PaperPoint at, double size)
    {
        brush.Circle(at, size / 2, brush.Symbol);
        brush.Line(at - new PaperPoint(size / 2, 0), at + new PaperPoint(size / 2, 0), brush.Narrow);
        brush.Line(at - new PaperPoint(0, size / 2), at + new PaperPoint(0, size / 2), brush.Narrow);
        return at;
    }
}

internal static partial class ServiceSymbols
{
    private static readonly ServiceSymbol OfHole = Add(new HoleSymbol());
}
