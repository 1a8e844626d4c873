using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A water heater: a circle with a wave across.</summary>
public static class HeaterSymbol
{
    public static void Draw(SymbolBrush brush, PaperPoint at, double radius)
    {
        brush.Fill(PaperShapes.Ellipse(at, radius, radius, 0), Palette.White);
        brush.Circle(at, radius, brush.Symbol);
        double step = radius / 2;
        brush.Path(brush.Narrow, new(at.X - radius, at.Y), new(at.X - step, at.Y - step), new(at.X, at.Y), new(at.X + step, at.Y + step), new(at.X + radius, at.Y));
    }
}
