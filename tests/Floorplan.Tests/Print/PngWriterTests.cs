using System.Globalization;
using Floorplan.Drawing.Scene;
using Floorplan.Print.Png;
using Floorplan.Tests.Drawing.Support;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.PixelFormats;
using Xunit;

namespace Floorplan.Tests.Print;

/// <summary>Pictures of sheets, read back by a decoder that is not ours.</summary>
public class PngWriterTests
{
    private const double MmPerInch = 25.4;

    /// <summary>A foot and a metre, as the bar names its unit.</summary>
    private static readonly Dictionary<string, double> Units = new() { ["m"] = 1000, ["ft"] = 304.8 };

    [Theory]
    [InlineData("fish-20ft", 150)]
    [InlineData("fish-20ft", 97)]
    [InlineData("poultry-40ft", 150)]
    [InlineData("poultry-40ft", 300)]
    public void The_scale_bar_is_as_long_in_the_picture_as_it_says(string template, int dpi)
    {
        var sheet = DrawnPlans.Template(template)[0];
        var numbers = sheet.Items.OfType<TextItem>().Where(t => t.Group == "bar scale").Select(t => t.Text.Split(' ')).ToList();
        double each = double.Parse(numbers[1][0], CultureInfo.InvariantCulture) * Units[numbers[^1][1]];
        var first = sheet.Items.OfType<AreaItem>().First(a => a.Group == "bar scale").Rings[0];
        using var picture = Image.Load<L8>(PngWriter.Write(sheet, dpi));

        double pixel = dpi / MmPerInch;
        var edges = Darkenings(picture, (int)(first.Average(p => p.Y) * pixel), (first[0].X - 3) * pixel, 90 * pixel);
        Assert.True(edges.Count >= 2, "two black parts at least");
        double measured = (edges[1] - edges[0]) / pixel * sheet.Denominator;
        Assert.Equal(2 * each, measured, 0.5 / pixel * sheet.Denominator);
    }

    /// <summary>A2 has 2.2 million pixels at 75 dpi, 8.7 at 150 and 139 at 600 (ISO 216: 594 x 420 mm); 50 are made at once.</summary>
    [Theory]
    [InlineData(75, 64, 22)]
    [InlineData(150, 64, 5)]
    [InlineData(150, 2, 2)]
    [InlineData(600, 64, 1)]
    public void Fine_pictures_are_made_few_at_once(int dpi, int processors, int atOnce)
    {
        SheetScene[] sheets = [new("x", "t", "d", 594, 420, [])];
        Assert.Equal(atOnce, PngWriter.AtOnce(sheets, dpi, processors));
    }

    [Fact]
    public void It_says_its_own_size_and_fineness()
    {
        var sheet = DrawnPlans.Template("empty-start")[0];
        using var picture = Image.Load(PngWriter.Write(sheet, 120));
        Assert.Equal((int)Math.Round(sheet.WidthMm * 120 / MmPerInch), picture.Width);
        Assert.Equal((int)Math.Round(sheet.HeightMm * 120 / MmPerInch), picture.Height);
        Assert.Equal(PixelResolutionUnit.PixelsPerMeter, picture.Metadata.ResolutionUnits);
        Assert.Equal(120, picture.Metadata.HorizontalResolution * MmPerInch / 1000, 0.02);
    }

    [Fact]
    public void The_same_sheet_gives_the_same_bytes()
        => Assert.Equal(
            PngWriter.Write(DrawnPlans.Template("fish-20ft")[1], 100), PngWriter.Write(DrawnPlans.Template("fish-20ft")[1], 100));

    /// <summary>Places along a row where white turns to half dark, between pixels.</summary>
    private static List<double> Darkenings(Image<L8> picture, int row, double from, double length)
    {
        const double Half = 127.5;
        var found = new List<double>();
        for (int x = (int)from; x < from + length; x++)
        {
            double a = picture[x, row].PackedValue, b = picture[x + 1, row].PackedValue;
            if (a > Half && b <= Half)
            {
                found.Add(x + ((a - Half) / (a - b)));
            }
        }

        // The line around a white part is thinner than the part is long: only black parts count.
        return [.. found.Where(x => picture[(int)x + 4, row].PackedValue < Half && picture[(int)x + 5, row].PackedValue < Half)];
    }
}
