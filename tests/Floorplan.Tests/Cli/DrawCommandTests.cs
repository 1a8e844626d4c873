using System.Xml.Linq;
using Floorplan.Drawing.Sheets;
using Xunit;

namespace Floorplan.Tests.Cli;

public class DrawCommandTests
{
    [Fact]
    public void Sheets_are_written_and_named()
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Plans.Good);
        var run = CliRun.In(folder.Path, "", "draw", "unit.unit");

        Assert.Equal(0, run.Exit);
        string[] sheets = [.. folder.Files.Where(f => f.EndsWith(".svg", StringComparison.Ordinal))];
        Assert.All(sheets, f => Assert.Matches(@"^out/unit-(10|[1-9])(\.[0-9]+)?-[a-z-]+\.svg$", f));
        Assert.All(SheetSet.All, s => Assert.Contains($"out/unit-{s.Number}-{s.Name}.svg", sheets));
        Assert.All(sheets, f => Assert.Contains("wrote " + f, run.Out));
        Assert.All(sheets, f => Assert.Equal("svg", XDocument.Load(folder.At(f)).Root!.Name.LocalName));
    }

    [Fact]
    public void Only_the_sheets_asked_for_are_drawn()
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Plans.Good);
        Assert.Equal(0, CliRun.In(folder.Path, "", "draw", "unit.unit", "--out", "paper", "--sheets", "1,4").Exit);
        string[] drawn = [.. folder.Files.Where(f => f.StartsWith("paper/", StringComparison.Ordinal) && f != "paper/drawn-files.txt")];
        Assert.Contains("paper/drawn-files.txt", folder.Files);
        Assert.Contains("paper/unit-1-general-arrangement.svg", drawn);
        Assert.Contains("paper/unit-4-water-and-drainage.svg", drawn);
        Assert.All(drawn, f => Assert.Matches(@"^paper/unit-[14](\.[0-9]+)?-", f));
    }

    [Fact]
    public void A_sheet_that_is_not_there_is_refused_with_those_that_are()
    {
        var run = CliRun.WithInput(Plans.Good, "draw", "-", "--sheets", "1,99");
        Assert.Equal(2, run.Exit);
        Assert.Contains("there is no sheet '99'; the sheets are " + string.Join(',', SheetSet.All.Select(s => s.Number)), run.Error);
    }

    [Theory]
    [InlineData("1")]
    [InlineData("2")]
    public void A_plan_with_errors_is_drawn_with_them_and_exits_with_1(string sheet)
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Plans.Overlapping);
        var run = CliRun.In(folder.Path, "", "draw", "unit.unit", "--sheets", sheet);
        Assert.Equal(1, run.Exit);
        Assert.Matches(@"error: .*\[1 overlap\]", run.Out);
        string[] drawn = [.. folder.Files.Where(f => f.EndsWith(".svg", StringComparison.Ordinal))];
        Assert.Contains("overlap", string.Concat(drawn.Select(f => File.ReadAllText(folder.At(f)))));
    }

    [Fact]
    public void A_text_that_does_not_read_writes_nothing_and_says_why()
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Plans.Broken);
        var run = CliRun.In(folder.Path, "", "draw", "unit.unit");
        Assert.Equal(1, run.Exit);
        Assert.Equal(["unit.unit"], folder.Files);
        Assert.Contains("staton", run.Error);
        Assert.Contains("nothing is drawn", run.Error);
    }

    [Fact]
    public void An_output_folder_that_is_a_file_is_a_sentence_and_leaves_nothing_half_written()
    {
        using var folder = new TemporaryFolder();
        folder.Write("unit.unit", Plans.Good);
        folder.Write("out", "in the way");
        var run = CliRun.In(folder.Path, "", "draw", "unit.unit");
        Assert.Equal(2, run.Exit);
        Assert.StartsWith("floorplan: out", run.Error);
        Assert.Equal(["out", "unit.unit"], folder.Files);
    }

    [Fact]
    public void Two_plans_of_one_name_do_not_overwrite_each_other()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.At("a"));
        Directory.CreateDirectory(folder.At("b"));
        folder.Write("a/unit.unit", Plans.Good);
        folder.Write("b/unit.unit", Plans.Good);
        var run = CliRun.In(folder.Path, "", "draw", "a/unit.unit", "b/unit.unit");
        Assert.Equal(2, run.Exit);
        Assert.Contains("two of the files are named unit", run.Error);
        Assert.Equal(["a/unit.unit", "b/unit.unit"], folder.Files);
    }

    [Fact]
    public void A_number_changed_in_the_text_changes_the_drawing()
    {
        using var folder = new TemporaryFolder();
        string changed = Plans.Good.Replace("size     1300 x 600 x 900", "size     1310 x 600 x 900", StringComparison.Ordinal);
        Assert.NotEqual(Plans.Good, changed);
        CliRun.In(folder.Path, Plans.Good, "draw", "-", "--sheets", "1", "--out", "one");
        CliRun.In(folder.Path, changed, "draw", "-", "--sheets", "1", "--out", "two");
        string[] drawn = [.. folder.Files.Where(f => f.EndsWith("-1-general-arrangement.svg", StringComparison.Ordinal))];
        Assert.Equal(2, drawn.Length);
        Assert.NotEqual(File.ReadAllText(folder.At(drawn[0])), File.ReadAllText(folder.At(drawn[1])));
    }
}
