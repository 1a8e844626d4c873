using System.Text;

namespace Floorplan.Drawing.Lettering;

/// <summary>
/// The width of a line as it grows, in the widest of the typefaces that people have: Inter, which sheets ask for, Arial or its like, or
/// DejaVu Sans.
/// </summary>
internal struct RunningWidth(double capHeight, bool bold)
{
    /// <summary>Programs round letters to their pixels; own measurement over three renderers.</summary>
    private const double Slack = 1.01;

    private long inter;
    private long dejaVu;
    private long liberation;

    /// <summary>In paper mm.</summary>
    public readonly double Width => Math.Max(inter, Math.Max(dejaVu, liberation)) * capHeight / InterAdvances.CapHeight * Slack;

    public void Add(Rune rune)
    {
        int index = InterAdvances.Index(rune.Value);
        inter += Or(InterAdvances.At(bold ? InterAdvances.Bold : InterAdvances.Regular, index));
        dejaVu += Or(InterAdvances.At(bold ? DejaVuAdvances.Bold : DejaVuAdvances.Regular, index));
        liberation += Or(InterAdvances.At(bold ? LiberationAdvances.Bold : LiberationAdvances.Regular, index));
    }

    private static int Or(int advance) => advance == 0 ? InterAdvances.OtherAdvance : advance;
}
