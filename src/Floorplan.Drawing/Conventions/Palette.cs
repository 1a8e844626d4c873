namespace Floorplan.Drawing.Conventions;

/// <summary>
/// Colours that people with any colour vision can tell apart (Okabe and Ito; F2), and lighter tints for floors. Colour is never alone:
/// every tint has a hatch and a letter, every stream a line type and a letter.
/// </summary>
public static class Palette
{
    public const string Black = "#000000";
    public const string White = "#FFFFFF";

    /// <summary>Filled walls.</summary>
    public const string Wall = "#404040";
    public const string Grey = "#808080";
    public const string LightGrey = "#D9D9D9";

    /// <summary>Hatching of floors: light enough to read text over its gaps.</summary>
    public const string HatchGrey = "#A6A6A6";

    /// <summary>Contrast 5.19 on white, but down to 4.25 on tinted floors: lines.</summary>
    public const string Blue = "#0072B2";

    /// <summary>The same darker, contrast 6 and more on every tint: text.</summary>
    public const string BlueText = "#005A8C";

    /// <summary>Contrast 3.87: lines from 0.35 mm.</summary>
    public const string Vermillion = "#D55E00";

    /// <summary>Contrast 3.42: lines from 0.35 mm.</summary>
    public const string Green = "#009E73";

    /// <summary>Contrast 3.06: lines from 0.5 mm.</summary>
    public const string Purple = "#CC79A7";

    /// <summary>Fills only.</summary>
    public const string SkyBlue = "#56B4E9";

    /// <summary>Fills only.</summary>
    public const string Orange = "#E69F00";

    /// <summary>Fills only.</summary>
    public const string Yellow = "#F0E442";

    /// <summary>The colour mixed with white; 0.2 is a 20 % tint.</summary>
    public static string Tint(string colour, double share)
    {
        int Part(int at)
        {
            int value = Convert.ToInt32(colour.Substring(at, 2), 16);
            return (int)Math.Round(255 - ((255 - value) * share));
        }

        return FormattableString.Invariant($"#{Part(1):X2}{Part(3):X2}{Part(5):X2}");
    }
}
