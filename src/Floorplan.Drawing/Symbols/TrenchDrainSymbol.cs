using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>A trench drain: a long frame with the bars of its grate.</summary>
public static class TrenchDrainSymbol
{
    private const double Pitch = 0.9;

    public static void Draw(SymbolBrush brush, PaperBox frame)
    {
        brush.Fill(frame, Palette.White);
        brush.Box(frame, brush.Symbol);
        bool alongX = frame.Width >= frame.Height;
        double length = alongX ? frame.Width : frame.Height;
        int bars = (int)(length / Pitch);
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
