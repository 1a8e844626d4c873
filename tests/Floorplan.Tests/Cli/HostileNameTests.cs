using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using Microsoft.VisualBasic.FileIO;
using UglyToad.PdfPig;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>A plan may come from a stranger: no name in it may steer a terminal, a browser or a reader of JSON.</summary>
public class HostileNameTests
{
    public static TheoryData<string> Names => new()
    {
        "</text><script>alert(1)</script>",
        "a]]><!--&amp;'`",
        "\u001b[31mred\u0007",
        "\u202Egnihsaw",
        "zero\u200Bwidth\uFEFF",
        "\u2028next",
        new string('W', 10_000),
        "&#x202E;{{7*7}}${x}",
        "\U0001F41F e\u0301 \u6C34",
        "=HYPERLINK(\u0022\u0022http://x\u0022\u0022,1)",
        "%%d \\U+0041 (a) \\) Tj",
        "-2+3 @SUM(A1)",
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void Console_output_holds_no_hidden_character(string name)
    {
        var run = CliRun.WithInput(PlanNamed(name), "check", "-");
        Assert.InRange(run.Exit, 0, 1);
        Assert.DoesNotContain(run.Out + run.Error, c => c != '\n'
            && (char.IsControl(c)
                || char.GetUnicodeCategory(c) == System.Globalization.UnicodeCategory.Format
                || c is '\u2028' or '\u2029'));
        Assert.All(run.Out.Split('\n'), line => Assert.True(line.Length < 25_000));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Json_reads_back_and_is_plain_ascii(string name)
    {
        var run = CliRun.WithInput(PlanNamed(name), "check", "-", "--output", "json");
        using var document = JsonDocument.Parse(run.Out);
        Assert.DoesNotContain(run.Out, c => c is > '~' or '<' or '>' or '&');
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Drawings_are_well_formed_and_hold_no_live_content_or_hidden_character(string name)
    {
        using var folder = new TemporaryFolder();
        var run = CliRun.In(folder.Path, PlanNamed(name), "draw", "-");
        Assert.True(run.Exit == 0 || folder.Files.Count == 0, run.Error);
        foreach (string file in folder.Files.Where(f => f.EndsWith(".svg", StringComparison.Ordinal)))
        {
            string text = File.ReadAllText(folder.At(file));
            var svg = XDocument.Parse(text);
            Assert.DoesNotContain(
                svg.Descendants(), e => e.Name.LocalName is "script" or "foreignObject" or "image" or "a" or "use" or "style");
            Assert.DoesNotContain(svg.Descendants().Attributes(), a => a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
                || a.Name.LocalName == "href");
            Assert.DoesNotContain(
                svg.DescendantNodes().OfType<XText>().SelectMany(t => t.Value), c
                    => c is '\u202E' or '\u200B' or '\u2028' or '\uFEFF' or '\u001b');
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_index_page_is_well_formed_and_holds_no_live_content_or_hidden_character(string name)
    {
        using var folder = new TemporaryFolder();
        CliRun.In(folder.Path, PlanNamed(name), "draw", "-", "--format", "pdf,dxf");
        foreach (string file in folder.Files.Where(f => f.EndsWith(".html", StringComparison.Ordinal)))
        {
            var page = XDocument.Load(folder.At(file));
            Assert.DoesNotContain(page.Descendants(), e => e.Name.LocalName is "script" or "iframe" or "object" or "form" or "base");
            Assert.DoesNotContain(
                page.Descendants().Attributes(), a
                    => a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase)
                        || a.Value.StartsWith("javascript", StringComparison.OrdinalIgnoreCase));
            Assert.All(
                page.Descendants().Attributes().Where(a => a.Name.LocalName is "href" or "src"), a
                    => Assert.Contains("out/" + Uri.UnescapeDataString(a.Value), folder.Files));
            Assert.DoesNotContain(page.Root!.Value, c => c is '\u202E' or '\u200B' or '\u2028' or '\uFEFF' or '\u001b');
        }
    }

    /// <summary>Read by PdfPig; what would run or lead elsewhere is an annotation or an action.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void The_pdf_opens_and_holds_nothing_that_runs_or_leads_elsewhere(string name)
    {
        using var folder = new TemporaryFolder();
        CliRun.In(folder.Path, PlanNamed(name), "draw", "-", "--format", "pdf", "--sheets", "1,9");
        foreach (string file in folder.Files.Where(f => f.EndsWith(".pdf", StringComparison.Ordinal)))
        {
            byte[] bytes = File.ReadAllBytes(folder.At(file));
            using var pdf = PdfDocument.Open(bytes);
            Assert.All(pdf.GetPages(), p => Assert.Empty(p.GetAnnotations()));
            string text = Encoding.Latin1.GetString(bytes);
            Assert.All(new[] { "/JavaScript", "/OpenAction", "/URI", "/Launch", "/AA <<" }, word => Assert.DoesNotContain(word, text));
        }
    }

    /// <summary>
    /// Read back by the framework's own reader of delimited text; a cell that starts with one of these is run (OWASP, CSV injection).
    /// </summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void No_cell_of_a_schedule_is_a_formula_and_rows_stay_whole(string name)
    {
        using var folder = new TemporaryFolder();
        CliRun.In(folder.Path, PlanNamed(name), "draw", "-");
        foreach (string file in folder.Files.Where(f => f.EndsWith(".csv", StringComparison.Ordinal)))
        {
            using var reader = new TextFieldParser(folder.At(file)) { Delimiters = [","], HasFieldsEnclosedInQuotes = true };
            int columns = reader.ReadFields()!.Length;
            while (reader.ReadFields() is { } cells)
            {
                Assert.Equal(columns, cells.Length);
                Assert.DoesNotContain(cells, c => c.Length > 0
                    && "=+-@\t\r".Contains(c[0])
                    && !double.TryParse(c, CultureInfo.InvariantCulture, out _));
            }
        }
    }

    internal static string PlanNamed(string name) => $"""
        plan "{name}"
          number "{name}"
          units metric
          owner "{name}"
        shell shed 6000 x 4000 x 2500
        room work "{name}" clean from west to east
        door d1 work to outside, south wall, 500 from west, 900 x 2050, swings out
        station bench "{name}" in work
          size 1500 x 600 x 900
          place against north wall, 1000 from west
          worker south
        flow product "{name}"
          outside -> d1 -> bench   by hand
        """;
}
