using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Words.Terms;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Symbols.Services;

/// <summary>
/// A point drain in the floor is a square frame with a round grate, a trench a long frame with the bars of its grate.
/// Sources differ on this symbol, so the sheet always letters it.
/// </summary>
internal sealed class DrainSymbol : ServiceSymbol<Drain>
{
    private const double TrenchLength = 12;
    private const double BarPitch = 0.9;

    public override string Layer => Layers.Drainage;

    public override ServiceSheet Sheets => ServiceSheet.Water;

    protected override string Name(Drain point) => point.Form == DrainForm.Trench ? "trench drain (length not to scale)" : "floor drain";

    protected override PaperPoint Draw(SymbolBrush brush, Drain point, PaperPoint at, double size)
    {
        if (point.Form == DrainForm.Trench)
        {
            Trench(brush, PaperBox.Around(at, TrenchLength, size));
        }
        else
        {
            Point(brush, at, size);
        }

        return at;
    }

    private static void Point(SymbolBrush brush, PaperPoint at, double size)
    {
        var frame = PaperBox.Around(at, size, size);
        brush.Fill(frame, Palette.White);
        brush.Box(frame, brush.Symbol);
        brush.Circle(at, size * 0.35, brush.Narrow);
        brush.Disc(at, size * 0.12);
    }

    private static void Trench(SymbolBrush brush, PaperBox frame)
    {
        brush.Fill(frame, Palette.White);
        brush.Box(frame, brush.Symbol);
        bool alongX = frame.Width >= frame.Height;
        double length = alongX ? frame.Width : frame.Height;
        int bars = (int)(length / BarPitch);
        for (int i = 1; i < bars; i++)
        {
            double at = length * i / bars;
            if (alongX)
            {
                brush.Line(new(frame.Left + at, frame.Top), new(frame.Left + at, frame.Bottom), brush.Narrow);
            }
            else
            {
                brush.Line(new(frame.Left, frame.Top + at), new(frame.Right, frame.Top + at), brush.Narrow);
            }
        }
    }
}

internal static partial class ServiceSymbols
{
    private static readonly ServiceSymbol OfDrain = Add(new DrainSymbol());
}
