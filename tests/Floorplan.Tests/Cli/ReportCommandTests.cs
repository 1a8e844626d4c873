using System.Xml.Linq;
using Floorplan.Tests.Architecture;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;
using Xunit;

namespace Floorplan.Tests.Cli;

public sealed class ReportCommandTests
{
    private const string Hostile = """
        plan "<script>alert(1)</script> & \"Co\""
          units metric
        shell container 20 ft high-cube
        room r "Room </table><img src=x>" dirty from west to east
        station bench "Bench <b>" in r
          size 1200 x 600 x 900
          place against north wall, 500 from west
          needs cold 8 L/min, drain
        water w1 cold in r, north wall, 2000 from west, height 1200
        drain fd1 floor in r, 3000 from west, centred, 100
        """;

    /// <summary>What the HTML says is said on paper too, word by word, in a table or a working.</summary>
    [Theory]
    [InlineData("poultry-40ft")]
    [InlineData("goat-dairy-shed")]
    public void The_pdf_says_all_that_the_page_says(string template)
    {
        using var folder = new TemporaryFolder();
        var run = CliRun.In(Repository.Root, "", "report", $"templates/{template}.unit", "--out", folder.Path);
        Assert.Equal(0, run.Exit);
        Assert.Equal([$"{template}-report.html", $"{template}-report.pdf"], folder.Files);
        using var pdf = PdfDocument.Open(folder.At($"{template}-report.pdf"));
        string paper = string.Concat(pdf.GetPages().Select(p => Bare(ContentOrderTextExtractor.GetText(p))));
        var body = Html(folder, template).Descendants("section").ToList();
        Assert.True(body.Count >= 5, "chapters are missing");
        Assert.All(
            body.Descendants().Where(e => e.Name.LocalName is "td" or "th" or "dt" or "h2" or "h3" or "caption"),
            cell => Assert.All(
                Words(cell.Value), word => Assert.Contains(word, paper, StringComparison.Ordinal)));
        Assert.Contains($"page1of{pdf.NumberOfPages}", paper, StringComparison.Ordinal);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Contains("For the owner", bookmarks.GetNodes().Select(n => n.Title));
    }

    [Fact]
    public void Names_of_a_plan_are_text_in_the_page()
    {
        using var folder = new TemporaryFolder();
        folder.Write("bad.unit", Hostile.Replace("\\\"", "'", StringComparison.Ordinal));
        Assert.Equal(0, CliRun.In(folder.Path, "", "report", "bad.unit", "--out", ".").Exit);
        var page = Html(folder, "bad");
        Assert.Empty(page.Descendants("script"));
        Assert.Empty(page.Descendants("img"));
        Assert.Contains("<script>", page.Descendants("h1").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_needs_nothing_beside_it()
    {
        using var folder = new TemporaryFolder();
        CliRun.In(Repository.Root, "", "report", "templates/fish-20ft.unit", "--out", folder.Path);
        string text = File.ReadAllText(folder.At("fish-20ft-report.html"));
        Assert.DoesNotContain("src=", text, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", text, StringComparison.Ordinal);
        Assert.All(
            Html(folder, "fish-20ft").Descendants("a"), a => Assert.StartsWith("#", a.Attribute("href")!.Value, StringComparison.Ordinal));
    }

    [Fact]
    public void Same_plan_same_bytes()
    {
        using var one = new TemporaryFolder();
        using var two = new TemporaryFolder();
        CliRun.In(Repository.Root, "", "report", "templates/fish-20ft.unit", "--out", one.Path);
        CliRun.In(Repository.Root, "", "report", "templates/fish-20ft.unit", "--out", two.Path);
        Assert.All(one.Files, f => Assert.Equal(File.ReadAllBytes(one.At(f)), File.ReadAllBytes(two.At(f))));
    }

    private static XDocument Html(TemporaryFolder folder, string name)
    {
        string text = File.ReadAllText(folder.At(name + "-report.html"));
        return XDocument.Parse(text[text.IndexOf("<html", StringComparison.Ordinal)..].Replace("xmlns=\"http://www.w3.org/2000/svg\"", ""));
    }

    private static IEnumerable<string> Words(string text) => text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries).Select(Bare)
        .Where(w => w.Length is > 0 and < 20);

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
