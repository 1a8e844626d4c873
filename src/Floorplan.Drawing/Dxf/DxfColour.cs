using System.Collections.Concurrent;
using System.Globalization;
using Floorplan.Drawing.Conventions;

namespace Floorplan.Drawing.Dxf;

/// <summary>
/// The nearest of the 255 numbered colours, which is all that R12 knows: 1 to 9 by name, 10 to 249 in 24 hues of five brightnesses,
/// each full and pale, 250 to 255 greys. The formula is from memory; a test holds it against another program's table.
/// </summary>
public static class DxfColour
{
    /// <summary>Black on white paper, white on a black screen.</summary>
    public const int Ink = 7;

    /// <summary>Dark on both, for text on a safety colour.</summary>
    public const int DarkOnSign = 250;

    /// <summary>A grey that is seen on both.</summary>
    public const int Middle = 8;

    private const int FirstHue = 10;
    private const int HueDegrees = 15;

    private static readonly int[] Named = [0xFF0000, 0xFFFF00, 0x00FF00, 0x00FFFF, 0x0000FF, 0xFF00FF, 0xFFFFFF, 0x808080, 0xC0C0C0];
    private static readonly int[] Greys = [0x333333, 0x505050, 0x696969, 0x828282, 0xBEBEBE, 0xFFFFFF];
    private static readonly double[] Brightness = [255, 165, 127, 76, 38];

    private static readonly string[] Fixed = [SafetyColours.Red, SafetyColours.Yellow, SafetyColours.Blue, SafetyColours.Green];

    /// <summary>The usual grounds of screens, and paper.</summary>
    private static readonly int[] Grounds = [0x000000, 0x212830, 0xFFFFFF];

    /// <summary>WCAG 2 asks for it of graphics (1.4.11).</summary>
    private const double LeastContrast = 3;

    private static readonly ConcurrentDictionary<string, int> Found = new();
    private static readonly ConcurrentDictionary<string, int> FoundReadable = new();

    private static readonly int[] Readable =
        [.. Enumerable.Range(1, 255).Where(n => n != Ink && Grounds.All(g => Contrast.Between(Rgb(n), g) >= LeastContrast))];

    /// <param name="colour"><c>#RRGGBB</c>.</param>
    public static int Nearest(string colour) => Found.GetOrAdd(colour, Search);

    /// <summary>The red, green and blue of a number from 1 to 255, as 0xRRGGBB.</summary>
    public static int Rgb(int number) => number switch
    {
        < FirstHue => Named[number - 1],
        >= 250 => Greys[number - 250],
        _ => Hue((number / 10 - 1) * HueDegrees, Brightness[number % 10 / 2], pale: number % 2 == 1),
    };

    /// <summary>Safety colours stay what they are on any ground.</summary>
    public static bool IsFixed(string colour) => Fixed.Contains(colour);

    /// <summary>For lines and fills: near the colour, and seen on white paper and on a dark screen.</summary>
    public static int OfShape(string colour) => IsFixed(colour) ? Nearest(colour) : FoundReadable.GetOrAdd(colour, SearchReadable);

    /// <summary>For text: what is black or grey on paper turns with the ground.</summary>
    public static int OfText(string colour) => IsGrey(Parse(colour)) ? Ink : OfShape(colour);

    private static int SearchReadable(string colour)
    {
        int wanted = Parse(colour);
        return wanted == 0 ? Ink : IsGrey(wanted) ? Middle : Readable.MinBy(n => Apart(wanted, Rgb(n)));
    }

    private static int Parse(string colour) => int.Parse(colour.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    private static bool IsGrey(int rgb) => (rgb >> 16) == (rgb & 255) && (rgb >> 8 & 255) == (rgb & 255);

    private static int Search(string colour)
    {
        int wanted = Parse(colour);
        return wanted == 0 ? Ink : Enumerable.Range(1, 255).Where(n => n != Ink).MinBy(n => Apart(wanted, Rgb(n)));
    }

    private static int Apart(int a, int b)
    {
        int Square(int shift)
        {
            int part = (a >> shift & 255) - (b >> shift & 255);
            return part * part;
        }

        return Square(16) + Square(8) + Square(0);
    }

    private static int Hue(int degrees, double brightness, bool pale)
    {
        int Part(int shifted)
        {
            // How much of red is in a hue: all within 60 degrees, none beyond 120.
            double share = Math.Clamp(2 - (Math.Min(shifted, 360 - shifted) / 60.0), 0, 1);
            return (int)(brightness * (pale ? (1 + share) / 2 : share));
        }

        return Part(degrees) << 16 | Part((degrees + 240) % 360) << 8 | Part((degrees + 120) % 360);
    }
}
