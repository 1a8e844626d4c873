using System.Text;
using Floorplan.Drawing.Lettering;
using SkiaSharp;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>
/// The widths of the typefaces that stand in for Inter, against the fonts themselves (Debian's fonts-dejavu-core and fonts-liberation),
/// read by Skia.
/// </summary>
public class OtherTypefaceTests
{
    private const string Folder = "/usr/share/fonts/truetype";

    public static TheoryData<string, bool> Fonts => new()
    {
        { "dejavu/DejaVuSans.ttf", false }, { "dejavu/DejaVuSans-Bold.ttf", true },
        { "liberation/LiberationSans-Regular.ttf", false }, { "liberation/LiberationSans-Bold.ttf", true },
    };

    [SkippableTheory, MemberData(nameof(Fonts))]
    public void No_character_is_wider_than_its_table_says(string file, bool bold)
    {
        string path = Path.Combine(Folder, file);
        OutsidePrograms.Require(File.Exists(path), $"{file} is not installed");
        using var face = SKTypeface.FromFile(path);
        using var font = new SKFont(face, InterAdvances.UnitsPerEm) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None };
        foreach (var (first, last) in InterAdvances.Ranges)
        {
            for (int character = first; character <= last; character++)
            {
                var table = (file[0], bold) switch
                {
                    ('d', false) => DejaVuAdvances.Regular,
                    ('d', true) => DejaVuAdvances.Bold,
                    (_, false) => LiberationAdvances.Regular,
                    _ => LiberationAdvances.Bold,
                };
                int said = InterAdvances.At(table, InterAdvances.Index(character));
                double drawn = font.ContainsGlyph(character) ? font.MeasureText(new Rune(character).ToString()) : 0;
                Assert.InRange(said - drawn, -0.01, 1.01);
            }
        }
    }
}
