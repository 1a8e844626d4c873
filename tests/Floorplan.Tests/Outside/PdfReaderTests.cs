using System.Globalization;
using System.Text.RegularExpressions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Print.Pdf;
using Floorplan.Tests.Cli;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>The PDF read by poppler, and its structure by qpdf.</summary>
public partial class PdfReaderTests
{
    private const double PointsPerMm = 72 / 25.4;

    [SkippableTheory]
    [InlineData("poultry-40ft")]
    [InlineData("goat-dairy-shed")]
    public void Poppler_finds_sizes_labels_fonts_and_no_fault(string template)
    {
        string info = OutsidePrograms.Find("pdfinfo"), text = OutsidePrograms.Find("pdftotext"), fonts = OutsidePrograms.Find("pdffonts");
        using var folder = new TemporaryFolder();
        var sheets = DrawnPlans.Template(template);
        string pdf =
            folder.Write(
                "a.pdf",
                PdfWriter.Write(
                    sheets, new PdfInfo("The title", "The author", "The subject", new DateTime(2026, 11, 25, 0, 0, 0, DateTimeKind.Utc))));

        var (about, complaints) = Readers.Run(info, "-l", "99", pdf);
        Assert.Equal("", complaints);
        Assert.Contains("The title", about);
        Assert.Contains("The author", about);
        Assert.Contains("Nov 25 00:00:00 2026", about);
        var sizes = PageSize().Matches(about).Select(m => (Number(m.Groups[1].Value), Number(m.Groups[2].Value))).ToList();
        Assert.Equal(sheets.Count, sizes.Count);
        Assert.All(sheets.Zip(sizes), s =>
        {
            Assert.Equal(s.First.WidthMm * PointsPerMm, s.Second.Item1, 0.01);
            Assert.Equal(s.First.HeightMm * PointsPerMm, s.Second.Item2, 0.01);
        });

        // Name, type, encoding of two words, embedded, subset, unicode.
        string[] rows = [.. Readers.Run(fonts, pdf).Out.Split('\n').Skip(2).Where(r => r.Length > 0)];
        Assert.Equal(2, rows.Length);
        Assert.All(rows, r => Assert.Matches(@"Inter-(Regular|Bold)\s+.*\s+yes\s+\w+\s+yes\s", r));

        var (read, faults) = Readers.Run(text, "-raw", pdf, "-");
        Assert.Equal("", faults);
        string solid = Solid(read);
        Assert.All(
            sheets.SelectMany(s => s.Items).OfType<TextItem>().Where(t => t.Degrees == 0), t => Assert.Contains(Solid(t.Text), solid));
    }

    [SkippableFact]
    public void Qpdf_finds_no_fault_in_its_structure()
    {
        string qpdf = OutsidePrograms.Find("qpdf");
        using var folder = new TemporaryFolder();
        string pdf = folder.Write("a.pdf", PdfWriter.Write(DrawnPlans.Template("fish-20ft"), new PdfInfo("(\\", ")>>", "<script>", null)));
        var (output, complaints) = Readers.Run(qpdf, "--check", pdf);
        Assert.Equal("", complaints);
        Assert.Contains("No syntax or stream encoding errors found", output);
    }

    /// <summary>
    /// Printed without scaling, letters have the height that the sheet gives them: poppler's own measure of a line of text.
    /// </summary>
    [SkippableFact]
    public void A_line_of_text_is_as_wide_as_it_was_measured()
    {
        string text = OutsidePrograms.Find("pdftotext");
        using var folder = new TemporaryFolder();
        var item = new TextItem("Evisceration", new PaperPoint(100, 100), 5, TextAnchor.Start, "A-ANNO-TEXT");
        string pdf =
            folder.Write("a.pdf", PdfWriter.Write([new SheetScene("x", "t", "d", 420, 297, [item])], new PdfInfo("t", "", "", null)));
        var word = Word().Match(Readers.Run(text, "-bbox", pdf, "-").Out);

        Assert.Equal(100 * PointsPerMm, Number(word.Groups[1].Value), 0.05);
        double width = (Number(word.Groups[2].Value) - Number(word.Groups[1].Value)) / PointsPerMm;
        Assert.Equal(TextMeasure.WidthInInter(item.Text, item.CapHeight), width, 0.1);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string Solid(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    [GeneratedRegex(@"Page +\d+ size: +([\d.]+) x ([\d.]+) pts")]
    private static partial Regex PageSize();

    [GeneratedRegex("""<word xMin="([\d.]+)".* xMax="([\d.]+)".*>Evisceration""")]
    private static partial Regex Word();
}
