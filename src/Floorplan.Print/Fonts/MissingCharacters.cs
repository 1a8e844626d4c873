using System.Text;
using Floorplan.Drawing.Scene;
using SkiaSharp;

namespace Floorplan.Print.Fonts;

/// <summary>Characters of sheets that the typeface lacks; PDF and PNG show a replacement mark for them.</summary>
public static class MissingCharacters
{
    /// <summary>What stands in their place.</summary>
    public const string Mark = Typefaces.Missing;

    /// <summary>Each once, in order of code.</summary>
    public static IReadOnlyList<Rune> Of(IEnumerable<SheetScene> sheets)
    {
        using var regular = new SKFont(Typefaces.Regular);
        using var bold = new SKFont(Typefaces.Bold);
        return
        [
            .. sheets.SelectMany(s => s.Items).OfType<TextItem>()
                .SelectMany(t => t.Text.EnumerateRunes().Where(r => !(t.Bold ? bold : regular).ContainsGlyph(r.Value)))
                .Distinct().Order(),
        ];
    }
}
