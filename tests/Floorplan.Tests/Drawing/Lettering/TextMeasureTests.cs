using Floorplan.Drawing.Lettering;
using Floorplan.Tests.Outside;
using SkiaSharp;
using Xunit;

namespace Floorplan.Tests.Drawing.Lettering;

/// <summary>Widths of texts against the font itself, read by Skia (Inter 3.19, hmtx and OS/2 tables).</summary>
public class TextMeasureTests
{
    private const double CapHeight = 100;

    public static TheoryData<string, bool> Texts => new()
    {
        { "Evisceration table", false }, { "12'-10 5/16\"", false }, { "2'-6\" × 2'-0\"", false }, { "8.4 m²", true },
        { "W 1234567890 g,j;Q", false }, { "Schlachtraum Größe ÄÖÜ", true }, { "Åse Ørsted – čeština žluť", false },
            { "DOOR END (CD)", true },
    };

    [Theory]
    [MemberData(nameof(Texts))]
    public void A_line_is_as_wide_as_Inter_draws_it_and_never_wider_than_measured(string text, bool bold)
    {
        using var face = Face(bold);
        using var font =
            new SKFont(face, (float)TextMeasure.FontSize(CapHeight))
            {
                Subpixel = true,
                LinearMetrics = true,
                Hinting = SKFontHinting.None
            };

        double drawn = text.Sum(c => (double)font.MeasureText(c.ToString()));

        Assert.Equal(drawn, TextMeasure.WidthInInter(text, CapHeight, bold), drawn * 0.002);
        Assert.True(TextMeasure.Width(text, CapHeight, bold) >= drawn);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Capitals_are_as_high_as_asked(bool bold)
    {
        using var face = Face(bold);
        using var font = new SKFont(face, (float)TextMeasure.FontSize(CapHeight));

        Assert.Equal(CapHeight, font.Metrics.CapHeight, 0.5);
    }

    [Fact]
    public void Tails_and_accents_stay_within_the_box()
    {
        using var face = Face(false);
        using var font = new SKFont(face, (float)TextMeasure.FontSize(CapHeight));
        foreach (char c in "gjpqy,;Qüéžbdfhkl/(")
        {
            font.MeasureText(c.ToString(), out var bounds);
            Assert.True(bounds.Bottom <= CapHeight * TextMeasure.Descent + 1, $"{c} reaches {bounds.Bottom} below the line");
            Assert.True(-bounds.Top <= CapHeight * TextMeasure.Ascent + 1, $"{c} reaches {-bounds.Top} above the line");
        }
    }

    private static SKTypeface Face(bool bold)
    {
        using var data = SKData.CreateCopy(InterFonts.Read(bold ? "Inter-Bold.ttf" : "Inter-Regular.ttf"));
        return SKTypeface.FromData(data);
    }
}
