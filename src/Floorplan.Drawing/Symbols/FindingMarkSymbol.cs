using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>
/// The place of a finding: a ring, full for an error, with a dot for a warning, empty for the rest. Its number stands beside it as a
/// label.
/// </summary>
public static class FindingMarkSymbol
{
    public const double Radius = 1.3;

    /// <param name="filled">The share of the ring that is full, from 0 to 1.</param>
    public static void Draw(SymbolBrush brush, PaperPoint at, double filled)
    {
        brush.Circle(at, Radius, brush.Symbol);
        if (filled > 0)
        {
            brush.Disc(at, Radius * filled);
        }
    }
}
