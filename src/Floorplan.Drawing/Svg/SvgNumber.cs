using System.Globalization;

namespace Floorplan.Drawing.Svg;

/// <summary>Numbers as SVG writes them here: invariant, at most three decimals, never <c>-0</c>.</summary>
public static class SvgNumber
{
    private const int Decimals = 3;

    public static string Text(double value)
    {
        double rounded = Math.Round(value, Decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0.###", CultureInfo.InvariantCulture);
    }
}
