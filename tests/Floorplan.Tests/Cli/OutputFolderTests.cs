using System.Runtime.Versioning;
using System.Xml.Linq;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>What lies in the folder after a second drawing is what that drawing says, and nothing of somebody else's was touched.</summary>
public class OutputFolderTests
{
    private const string OldWall = "out/unit-cut-outs-south-wall-mm.dxf";

    private static string Hole(string wall) => $"""
        plan "Shed with one hole"
          units metric
        shell shed 6000 x 4000 x 2500
        room work "Work" clean from west to east
        hatch h1 work to outside, {wall} wall, 2000 from west, 900 x 600, sill 1000
        """;

    [Fact]
    public void The_cutting_file_of_a_wall_that_has_no_hole_any_more_goes()
    {
        using var folder = new TemporaryFolder();
        Draw(folder, Hole("south"), "--format", "dxf");
        Assert.Contains(OldWall, folder.Files);
        var run = Draw(folder, Hole("north"), "--format", "dxf");
        Assert.Contains($"  took away {OldWall}, which is out of date\n", run.Out);
        Assert.DoesNotContain(OldWall, folder.Files);
        Assert.Contains("out/unit-cut-outs-north-wall-mm.dxf", folder.Files);
    }

    /// <summary>Steel is cut from them, so even a quick look at one sheet does not leave them.</summary>
    [Theory]
    [InlineData("--sheets", "1")]
    [InlineData("--format", "svg")]
    public void Old_cutting_files_go_whatever_is_drawn_of_a_changed_plan(string option, string value)
    {
        using var folder = new TemporaryFolder();
        Draw(folder, Hole("south"), "--format", "svg,dxf");
        string sheet = "out/unit-4-water-and-drainage.svg";
        Assert.Contains(sheet, folder.Files);
        Draw(folder, Hole("north"), option, value);
        Assert.DoesNotContain(OldWall, folder.Files);
        Assert.Contains(sheet, folder.Files);
    }

    [Fact]
    public void What_was_drawn_from_the_same_text_in_another_format_stays_and_is_in_the_index()
    {
        using var folder = new TemporaryFolder();
        Draw(folder, Hole("south"), "--format", "dxf");
        Draw(folder, Hole("south"), "--format", "svg");
        Assert.Contains(OldWall, folder.Files);
        Assert.Contains(OldWall[4..], Leads(folder));
    }

    [Fact]
    public void A_used_file_that_changed_makes_its_drawings_old()
    {
        using var folder = new TemporaryFolder();
        string plan = Hole("south") + "\nkinds from benches\nstation b like bench in work, against north wall, 100 from west\n";
        folder.Write("benches.unit", "kind bench \"Bench\"\n  size 1000 x 600 x 900\n");
        Draw(folder, plan, "--format", "dxf");
        Assert.Contains(OldWall, folder.Files);
        folder.Write("benches.unit", "kind bench \"Bench\"\n  size 1100 x 600 x 900\n");
        Draw(folder, plan, "--format", "svg");
        Assert.DoesNotContain(OldWall, folder.Files);
    }

    [Fact]
    public void Files_that_it_did_not_write_are_left()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.At("out"));
        folder.Write("out/unit-cut-outs-roof-mm.dxf", "mine");
        folder.Write("out/notes.txt", "mine");
        folder.Write("precious.svg", "mine");
        folder.Write("out/drawn-files.txt", """
            plan unit
            title x
            file 000000000000 ..%2Fprecious.svg
            file 000000000000 notes.txt
            file 000000000000 unit.unit
            plan ..%2Fprecious
            file 000000000000 ..%2Fprecious.svg
            plan out%2F..%2F..%2Fprecious
            file 000000000000 x
            file
            """);
        Assert.Equal(0, Draw(folder, Hole("south"), "--format", "dxf").Exit);
        Assert.All(
            ["out/unit-cut-outs-roof-mm.dxf", "out/notes.txt", "precious.svg"], f => Assert.Equal("mine", File.ReadAllText(folder.At(f))));
    }

    [SkippableFact]
    [UnsupportedOSPlatform("windows")]
    public void No_link_is_followed()
    {
        Skip.If(OperatingSystem.IsWindows(), "links need rights there");
        using var folder = new TemporaryFolder();
        folder.Write("precious", "mine");
        Draw(folder, Hole("south"), "--format", "dxf");
        Link(folder, OldWall);
        Link(folder, "out/unit-1-general-arrangement-mm.dxf");
        var run = Draw(folder, Hole("north"), "--format", "dxf");
        Assert.Equal(2, run.Exit);
        Assert.Contains($"{OldWall}: this is out of date, and it is not a file that was written here", run.Error);
        Assert.Contains("out/unit-1-general-arrangement-mm.dxf: this is a link, and none is followed", run.Error);
        Assert.Equal("mine", File.ReadAllText(folder.At("precious")));

        Directory.CreateDirectory(folder.At("else"));
        Directory.CreateSymbolicLink(folder.At("there"), folder.At("else"));
        run = CliRun.In(folder.Path, "", "draw", "unit.unit", "--out", "there");
        Assert.Equal(2, run.Exit);
        Assert.Contains("there: this is a link, and none is followed; name the folder that it leads to: --out ", run.Error);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder.At("else")));
    }

    [Fact]
    public void The_plan_itself_is_never_written_over()
    {
        using var folder = new TemporaryFolder();
        foreach (string name in new[] { "unit.pdf", "index.html" })
        {
            string plan = Hole("south");
            folder.Write(name, plan);
            var run = CliRun.In(folder.Path, "", "draw", name, "--format", "pdf", "--out", ".");
            Assert.Equal(2, run.Exit);
            Assert.Contains(name, run.Error);
            Assert.Equal(plan, File.ReadAllText(folder.At(name)));
        }
    }

    [Fact]
    public void A_page_of_somebody_else_is_left()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.At("out"));
        folder.Write("out/index.html", "<html>my shop</html>");
        var run = Draw(folder, Hole("south"));
        Assert.Equal(2, run.Exit);
        Assert.Contains("out/index.html: draw did not write this page, so it is left", run.Error);
        Assert.Equal("<html>my shop</html>", File.ReadAllText(folder.At("out/index.html")));
    }

    [Fact]
    public void The_index_lists_what_earlier_runs_drew_of_other_plans()
    {
        using var folder = new TemporaryFolder();
        Draw(folder, Hole("south"));
        folder.Write("second.unit", Hole("north").Replace("Shed with one hole", "Second shed", StringComparison.Ordinal));
        CliRun.In(folder.Path, "", "draw", "second.unit");
        string[] all = [.. folder.Files.Where(f => f.StartsWith("out/", StringComparison.Ordinal)).Select(f => f[4..])];
        Assert.Contains("unit-1-general-arrangement.svg", all);
        Assert.Equal(all.Where(f => f is not ("index.html" or "drawn-files.txt")), Leads(folder));
        string page = XDocument.Load(folder.At("out/index.html")).Root!.Value;
        Assert.Contains("Shed with one hole", page);
        Assert.Contains("unit: drawn by an earlier run", page);
        Assert.Contains("Second shed", page);
    }

    private static CliRun Draw(TemporaryFolder folder, string plan, params string[] options)
    {
        folder.Write("unit.unit", plan);
        return CliRun.In(folder.Path, "", ["draw", "unit.unit", .. options]);
    }

    private static IEnumerable<string> Leads(TemporaryFolder folder) => XDocument.Load(folder.At("out/index.html")).Descendants()
        .Attributes().Where(a => a.Name.LocalName is "href" or "src" && a.Value[0] != '#').Select(a => Uri.UnescapeDataString(a.Value))
        .Distinct()
        .Order(StringComparer.Ordinal);

    private static void Link(TemporaryFolder folder, string name)
    {
        File.Delete(folder.At(name));
        File.CreateSymbolicLink(folder.At(name), folder.At("precious"));
    }
}
