using System.Globalization;
using System.Text;

namespace Floorplan.Drawing.Svg;

/// <summary>Numbers as SVG writes them here: invariant, at most three decimals, never <c>-0</c>.</summary>
public static class SvgNumber
{
    private const int Decimals = 3;
    private const int Scale = 1000;

    /// <summary>Beyond this a number is no place on paper; it is written the slow way.</summary>
    private const double Largest = 1e12;

    public static string Text(double value) => Append(new StringBuilder(12), value).ToString();

    /// <summary>A sheet has some ten thousand numbers, so they are written without a string each.</summary>
    public static StringBuilder Append(StringBuilder text, double value)
    {
        if (!(Math.Abs(value) < Largest))
        {
            return text.Append(Math.Round(value, Decimals, MidpointRounding.AwayFromZero).ToString("0.###", CultureInfo.InvariantCulture));
        }

        long thousandths = (long)Math.Round(value * Scale, MidpointRounding.AwayFromZero);
        if (thousandths < 0)
        {
            text.Append('-');
            thousandths = -thousandths;
        }

        text.Append(thousandths / Scale);
        long part = thousandths % Scale;
        if (part == 0)
        {
            return text;
        }

        text.Append('.');
        for (int digit = Scale / 10; part > 0; digit /= 10)
        {
            text.Append((char)('0' + (part / digit)));
            part %= digit;
        }

        return text;
    }
}
