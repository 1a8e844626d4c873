using System.Text;
using SkiaSharp;

namespace Floorplan.Print.Fonts;

/// <summary>
/// Inter in the two weights that sheets use. No font of the machine stands in for characters that Inter lacks, since then the
/// same plan would give other bytes elsewhere: they are drawn as <see cref="Missing"/>, and counted.
/// </summary>
internal static class Typefaces
{
    /// <summary>Drawn for a character that Inter lacks: an empty square.</summary>
    public const string Missing = "\u25A1";

    private static readonly Lazy<SKTypeface> LazyRegular = new(() => Load("Inter-Regular.ttf"));
    private static readonly Lazy<SKTypeface> LazyBold = new(() => Load("Inter-Bold.ttf"));

    public static SKTypeface Regular => LazyRegular.Value;

    public static SKTypeface Bold => LazyBold.Value;

    /// <summary>The text with every character that the typeface lacks replaced.</summary>
    public static string Drawable(string text, bool bold)
    {
        using var font = new SKFont(bold ? Bold : Regular);
        if (font.ContainsGlyphs(text))
        {
            return text;
        }

        var drawable = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            drawable.Append(font.ContainsGlyph(rune.Value) ? rune.ToString() : Missing);
        }

        return drawable.ToString();
    }

    private static SKTypeface Load(string file)
    {
        using var data = SKData.CreateCopy(InterFonts.Read(file));
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException($"{file} is no font");
    }
}
