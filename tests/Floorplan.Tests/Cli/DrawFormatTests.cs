using System.Xml.Linq;
using Floorplan.Drawing.Sheets;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>What <c>draw</c> writes besides SVG.</summary>
public class DrawFormatTests
{
    private static readonly string[] Schedules =
    [
        "out/unit-connections.csv", "out/unit-cut-outs.csv", "out/unit-finishes.csv", "out/unit-frames.csv", "out/unit-holes.csv",
        "out/unit-openings.csv", "out/unit-services.csv", "out/unit-stations.csv", "out/unit-weights.csv",
    ];

    [Fact]
    public void Every_format_is_written_and_named()
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Plans.Good);
        var run = CliRun.In(folder.Path, "", "draw", "unit.unit", "--format", "svg,pdf,png,dxf", "--dpi", "50");

        Assert.Equal(0, run.Exit);
        var pages = DrawnPlans.Draw(Plans.Good);
        Assert.Equal(SheetSet.All.Select(s => s.Number), pages.Select(p => p.Sheet).Distinct());
        string[] sheets = [.. pages.Select(p => $"out/unit-{p.Name}")];
        string[] expected =
            [
                "out/drawn-files.txt", "out/index.html", "out/unit.pdf", .. Schedules,
                .. sheets.Select(s => s + ".svg"), .. sheets.Select(s => s + ".png"),
                .. sheets.Select(s => s + "-mm.dxf"),
                .. new[] { "south-wall", "north-wall", "floor" }.Select(w => $"out/unit-cut-outs-{w}-mm.dxf")];
        string[] written = [.. folder.Files.Where(f => f.StartsWith("out/", StringComparison.Ordinal))];
        Assert.Equal(expected.Order(StringComparer.Ordinal), written);
        Assert.All(
            written.Where(f => f != "out/drawn-files.txt"), f => Assert.Contains("wrote " + f + "\n", run.Out));
    }

    [Fact]
    public void Without_a_format_it_writes_svg_schedules_and_the_index()
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Plans.Good);
        CliRun.In(folder.Path, "", "draw", "unit.unit");
        Assert.Equal(
            ["out/drawn-files.txt", "out/index.html", .. Schedules],
            folder.Files.Where(f => f.StartsWith("out/", StringComparison.Ordinal) && !f.EndsWith(".svg", StringComparison.Ordinal)));
    }

    [Fact]
    public void Some_sheets_alone_leave_the_index_as_it_is()
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Plans.Good);
        CliRun.In(folder.Path, "", "draw", "unit.unit", "--sheets", "1", "--format", "pdf");
        Assert.Equal(["out/drawn-files.txt", "out/unit.pdf", "unit.unit"], folder.Files);
    }

    [Fact]
    public void The_index_leads_to_every_file_that_was_written()
    {
        using var folder = new TemporaryFolder();
        folder.Write("my unit & co.unit", Plans.Good);
        CliRun.In(folder.Path, "", "draw", "my unit & co.unit", "--format", "svg,pdf,dxf", "--out", ".");
        var page = XDocument.Load(folder.At("index.html"));
        var leads = page.Descendants().Attributes().Where(a => a.Name.LocalName is "href" or "src")
            .Select(a => Uri.UnescapeDataString(a.Value)).Distinct();
        Assert.Equal(
            folder.Files.Where(f => f is not ("index.html" or "drawn-files.txt") && !f.EndsWith(".unit", StringComparison.Ordinal)),
            leads.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_index_lists_every_finding_and_every_plan_of_the_run()
    {
        using var folder = new TemporaryFolder();
        folder.Write("good.unit", Plans.Good);
        folder.Write("bad.unit", Plans.Overlapping);
        var run = CliRun.In(folder.Path, "", "draw", "good.unit", "bad.unit", "--out", ".");
        string page = XDocument.Load(folder.At("index.html")).Root!.Value;
        Assert.Equal(1, run.Exit);
        Assert.Contains("rule overlap", page);
        Assert.Contains("Skelbeck quay fish unit", page);
    }

    [Theory]
    [InlineData("--format", "svg,pfd", "there is no format 'pfd'; the formats are svg,pdf,png,dxf")]
    [InlineData("--format", "", "there is no format ''")]
    [InlineData("--dpi", "0", "'0' is not a whole number from 50 to 600")]
    [InlineData("--dpi", "1e9", "'1e9' is not a whole number")]
    public void What_is_not_an_option_is_refused_with_what_is(string option, string value, string sentence)
    {
        var run = CliRun.WithInput(Plans.Good, "draw", "-", option, value);
        Assert.Equal(2, run.Exit);
        Assert.Contains(sentence, run.Error);
    }

    [Fact]
    public void A_picture_too_large_to_make_is_refused_with_the_finest_that_can_be_made()
    {
        using var folder = new TemporaryFolder();
        var run =
            CliRun.In(
                folder.Path, "plan \"Hall\"\n  units metric\nshell shed 40000 x 20000 x 3000\nsheet 1\n  paper A0\n", "draw", "-",
                "--format", "png", "--dpi", "600", "--sheets", "1");
        Assert.Equal(2, run.Exit);
        Assert.Matches(@"28087 x 19866 pixels, too many to make; --dpi \d+ is the finest", run.Error);
        Assert.Empty(folder.Files);
    }

    [Theory]
    [InlineData("svg")]
    [InlineData("pdf")]
    [InlineData("png")]
    [InlineData("dxf")]
    public void Two_runs_write_the_same_bytes(string format)
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Plans.Good);
        CliRun.In(folder.Path, "", "draw", "unit.unit", "--format", format, "--dpi", "60", "--out", "a");
        CliRun.In(folder.Path, "", "draw", "unit.unit", "--format", format, "--dpi", "60", "--out", "b");
        string[] first = [.. folder.Files.Where(f => f.StartsWith("a/", StringComparison.Ordinal))];
        Assert.NotEmpty(first);
        Assert.All(first, f => Assert.Equal(File.ReadAllBytes(folder.At(f)), File.ReadAllBytes(folder.At("b" + f[1..]))));
    }

    [Fact]
    public void It_says_which_characters_the_typeface_lacks()
    {
        using var folder = new TemporaryFolder();
        string plan = Plans.Good.Replace("\"Rinse bench\"", "\"Rinse \u6C34 bench\"", StringComparison.Ordinal);
        Assert.Contains("lacks: \u6C34\n", CliRun.In(folder.Path, plan, "draw", "-", "--format", "pdf").Out);
        Assert.DoesNotContain("lacks", CliRun.In(folder.Path, plan, "draw", "-", "--format", "svg,dxf").Out);
    }
}
