using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Svg;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Svg;

public partial class SvgWriterTests
{
    [Theory]
    [InlineData(0.1 + 0.2, "0.3")]
    [InlineData(-0.0000001, "0")]
    [InlineData(1e-7, "0")]
    [InlineData(123456.7891, "123456.789")]
    [InlineData(-2.5, "-2.5")]
    public void Numbers_are_short_and_plain(double value, string text) => Assert.Equal(text, SvgNumber.Text(value));

    [Fact]
    public void Numbers_are_the_ones_that_the_framework_writes()
    {
        var random = new Random(3);
        for (int i = 0; i < 20_000; i++)
        {
            double value = (random.NextDouble() - 0.5) * Math.Pow(10, random.Next(-5, 7));
            double rounded = Math.Round(value, 3, MidpointRounding.AwayFromZero);
            Assert.Equal(rounded, double.Parse(SvgNumber.Text(value), CultureInfo.InvariantCulture), 0.00101);
            Assert.True(SvgNumber.Text(value).Length <= rounded.ToString("0.000", CultureInfo.InvariantCulture).Length + 1);
        }
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes_whatever_the_culture_and_on_every_run()
    {
        var sheets = DrawnPlans.Draw(File.ReadAllText(Repository.At("templates", "poultry-40ft.unit"))).Select(SvgWriter.Write).ToList();
        var before = CultureInfo.CurrentCulture;
        try
        {
            var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            culture.NumberFormat.NumberDecimalSeparator = ",";
            culture.NumberFormat.NumberGroupSeparator = ".";
            culture.NumberFormat.NegativeSign = "\u2212";
            CultureInfo.CurrentCulture = culture;
            var again = DrawnPlans.Draw(File.ReadAllText(Repository.At("templates", "poultry-40ft.unit")));

            Assert.Equal(sheets, again.Select(SvgWriter.Write));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_sheet_is_well_formed_at_true_size_with_title_and_description()
    {
        foreach (var sheet in DrawnPlans.Templates.SelectMany(DrawnPlans.Template))
        {
            var svg = XDocument.Parse(SvgWriter.Write(sheet)).Root!;
            XNamespace ns = "http://www.w3.org/2000/svg";
            Assert.Equal($"{SvgNumber.Text(sheet.WidthMm)}mm", svg.Attribute("width")!.Value);
            Assert.Equal($"0 0 {SvgNumber.Text(sheet.WidthMm)} {SvgNumber.Text(sheet.HeightMm)}", svg.Attribute("viewBox")!.Value);
            Assert.Equal(sheet.Title, svg.Element(ns + "title")!.Value);
            Assert.Equal(sheet.Description, svg.Element(ns + "desc")!.Value);
            // In what is drawn, not in what is written on the sheet.
            Assert.All(
                svg.Descendants().Attributes().Where(a => a.Name.LocalName is not "class"), a => Assert.DoesNotMatch(OddNumber(), a.Value));
        }
    }

    [Theory]
    [InlineData("</text><script>alert(1)</script>")]
    [InlineData("a & b < c > d \" e ' f")]
    [InlineData("\u0000\u0007\u001b\u202e")]
    [InlineData("\ud83d\ude00 \ufffe")]
    public void A_hostile_text_is_only_text(string text)
    {
        var item = new TextItem(text, new PaperPoint(1, 1), 2.5, TextAnchor.Start, "L", text);
        var svg = XDocument.Parse(SvgWriter.Write(new SheetScene("x", text, text, 10, 10, [item])));

        Assert.DoesNotContain(svg.Descendants(), e => e.Name.LocalName is "script");
        Assert.Single(svg.Descendants(), e => e.Name.LocalName == "text");
    }

    [GeneratedRegex("""(?<![#\w.])[\d.]+[eE][-+]?\d|NaN|Infinity|\d\.\d{4,}""")]
    private static partial Regex OddNumber();
}
