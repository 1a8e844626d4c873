using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>Where two streams meet: a white square on its corner with a cross.</summary>
public static class CrossingMarkSymbol
{
    public const double HalfSize = 1.8;

    public static void Draw(SymbolBrush brush, PaperPoint at)
    {
        PaperPoint[] ring =
            [new(at.X, at.Y - HalfSize), new(at.X + HalfSize, at.Y), new(at.X, at.Y + HalfSize), new(at.X - HalfSize, at.Y)];
        brush.Fill(ring, Palette.White);
        brush.Ring(brush.Symbol, ring);
        double arm = HalfSize * 0.4;
        brush.Line(new(at.X - arm, at.Y - arm), new(at.X + arm, at.Y + arm), brush.Symbol);
        brush.Line(new(at.X - arm, at.Y + arm), new(at.X + arm, at.Y - arm), brush.Symbol);
    }
}
