using Floorplan.Drawing.Scene;
using Floorplan.Print.Pdf;
using Floorplan.Tests.Drawing.Support;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using Xunit;

namespace Floorplan.Tests.Print;

/// <summary>What a PDF holds, read back by a reader that is not ours.</summary>
public class PdfWriterTests
{
    /// <summary>ISO 32000-1, 8.3.2.3: 72 points to the inch.</summary>
    private const double PointsPerMm = 72 / 25.4;

    private static readonly PdfInfo Info =
        new("Unit (first) \\ \u00C5\u6C34", "P. Arden", "5 sheets", new DateTime(2026, 11, 25, 0, 0, 0, DateTimeKind.Utc));

    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    [Theory, MemberData(nameof(Templates))]
    public void Pages_are_sheets_at_true_size_and_every_label_is_text_in_an_embedded_font(string template)
    {
        var sheets = DrawnPlans.Template(template);
        using var pdf = PdfDocument.Open(PdfWriter.Write(sheets, Info));

        Assert.Equal(sheets.Count, pdf.NumberOfPages);
        foreach (var (sheet, page) in sheets.Zip(pdf.GetPages()))
        {
            Assert.Equal(sheet.WidthMm * PointsPerMm, page.Width, 0.01);
            Assert.Equal(sheet.HeightMm * PointsPerMm, page.Height, 0.01);
            string text = Solid(page.Text);
            Assert.All(sheet.Items.OfType<TextItem>(), t => Assert.Contains(Solid(t.Text), text));
            Assert.All(page.Letters.Select(l => l.FontName).Distinct(), f => Assert.Matches("^[A-Z]{6}[+]Inter-(Regular|Bold)$", f));
            Assert.Empty(page.GetImages());
        }
    }

    /// <summary>A line of letters stands where its label does: what is searched for is found at its place.</summary>
    [Fact]
    public void Labels_stand_where_the_sheet_has_them()
    {
        var sheet =
            new SheetScene(
                "x", "t", "d", 420, 297,
                [
                    Label("Left", 30, 40, TextAnchor.Start, 0), Label("Right", 200, 100, TextAnchor.End, 0),
                    Label("Up", 300, 200, TextAnchor.Start, 90)]);
        using var pdf = PdfDocument.Open(PdfWriter.Write([sheet], Info));
        var letters = pdf.GetPage(1).Letters;

        AssertAt(letters.Single(l => l.Value == "L").StartBaseLine, 30, 40);
        AssertAt(letters.Last(l => l.Value == "t" && l.StartBaseLine.X > 200).EndBaseLine, 200, 100);
        AssertAt(letters.Single(l => l.Value == "U").StartBaseLine, 300, 200);
        Assert.Equal(3.5, letters.Single(l => l.Value == "L").BoundingBox.Height / PointsPerMm, 0.05);

        static void AssertAt(UglyToad.PdfPig.Core.PdfPoint at, double x, double y)
        {
            Assert.Equal(x * PointsPerMm, at.X, 0.1);
            Assert.Equal((297 - y) * PointsPerMm, at.Y, 0.1);
        }
    }

    [Fact]
    public void It_names_itself_and_has_no_date_but_the_one_given()
    {
        var sheets = DrawnPlans.Template("empty-start");
        using var dated = PdfDocument.Open(PdfWriter.Write(sheets, Info));
        Assert.Equal(
            (Info.Title, Info.Author, Info.Subject), (dated.Information.Title, dated.Information.Author, dated.Information.Subject));
        Assert.Equal(Info.Date, dated.Information.GetCreatedDateTimeOffset()!.Value.UtcDateTime);

        using var plain = PdfDocument.Open(PdfWriter.Write(sheets, Info with { Date = null }));
        Assert.Null(plain.Information.CreationDate);
        Assert.Null(plain.Information.ModifiedDate);
    }

    /// <summary>Many pages stand in a tree of pages, so their order is not that of the file.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(30)]
    public void Every_sheet_has_a_bookmark_to_its_page(int count)
    {
        SheetScene[] sheets =
            [.. Enumerable.Range(1, count)
                .Select(i => new SheetScene("x", $"Sheet (no. {i}) \u00E9\u6C34", "d", 100
                    + i, 100, [Label("a", 10, 10, TextAnchor.Start, 0)]))];
        using var pdf = PdfDocument.Open(PdfWriter.Write(sheets, Info));

        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var marks = bookmarks.GetNodes().Cast<DocumentBookmarkNode>().Select(b => (b.Title, b.PageNumber));
        Assert.Equal(sheets.Select((s, i) => (s.Title, i + 1)), marks);
        Assert.Equal(sheets.Select(s => s.WidthMm * PointsPerMm), pdf.GetPages().Select(p => p.Width), (a, b) => Math.Abs(a - b) < 0.01);
    }

    [Fact]
    public void The_same_sheets_give_the_same_bytes()
        => Assert.Equal(
            PdfWriter.Write(DrawnPlans.Template("poultry-40ft"), Info), PdfWriter.Write(DrawnPlans.Template("poultry-40ft"), Info));

    /// <summary>What the typeface lacks is marked, not left out.</summary>
    [Theory]
    [InlineData("(a) \\) Tj ET <</S /JavaScript>>", "(a) \\) Tj ET <</S /JavaScript>>")]
    [InlineData("%%d \\U+0041 100%", "%%d \\U+0041 100%")]
    [InlineData("\u00D8 25 \u2264 \u00BD \u0434 \u03A9", "\u00D8 25 \u2264 \u00BD \u0434 \u03A9")]
    [InlineData("fish \U0001F41F \u6C34", "fish \u25A1 \u25A1")]
    public void A_hostile_text_is_only_text(string text, string read)
    {
        var sheet = new SheetScene("x", text, text, 420, 297, [Label(text, 30, 40, TextAnchor.Start, 0)]);
        using var pdf = PdfDocument.Open(PdfWriter.Write([sheet], new PdfInfo(text, text, text, null)));
        Assert.Equal(Solid(read), Solid(pdf.GetPage(1).Text));
        Assert.Equal(text, pdf.Information.Title);
        Assert.Empty(pdf.GetPage(1).GetAnnotations());
    }

    private static TextItem Label(string text, double x, double y, TextAnchor anchor, double degrees)
        => new(text, new PaperPoint(x, y), 3.5, anchor, "A-ANNO-TEXT", Degrees: degrees);

    private static string Solid(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
