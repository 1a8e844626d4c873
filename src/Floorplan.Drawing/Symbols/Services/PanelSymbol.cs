using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;

namespace Floorplan.Drawing.Symbols.Services;

/// <summary>A distribution board: a rectangle along its wall, half filled (M).</summary>
internal sealed class PanelSymbol : ServiceSymbol<Panel>
{
    private const double Length = 5;
    private const double Depth = 2;

    public override string Layer => Layers.Power;

    public override ServiceSheet Sheets => ServiceSheet.Power;

    protected override string Name(Panel point) => "power panel";

    protected override PaperPoint Draw(SymbolBrush brush, Panel point, PaperPoint at, double size)
    {
        var middle = at + PaperShapes.Times(IntoRoom(point), Depth / 2);
        var box = point.Wall is { } wall && !wall.RunsEastWest()
            ? PaperBox.Around(middle, Depth, Length)
            : PaperBox.Around(middle, Length, Depth);
        brush.Fill(box, Palette.White);
        brush.Fill(new(box.Left, box.Top), new(box.Right, box.Top), new(box.Left, box.Bottom));
        brush.Box(box, brush.Symbol);
        return box.Centre;
    }
}

internal static partial class ServiceSymbols
{
    private static readonly ServiceSymbol OfPanel = Add(new PanelSymbol());
}
