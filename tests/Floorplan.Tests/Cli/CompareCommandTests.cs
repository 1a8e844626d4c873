using Xunit;

namespace Floorplan.Tests.Cli;

public class CompareCommandTests
{
    [Fact]
    public void Differences_and_findings_that_came_and_went_are_told()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Plans.Good);
        folder.Write(
            "b.unit",
            Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal));

        var there = CliRun.In(folder.Path, "", "compare", "a.unit", "b.unit");
        Assert.Equal(0, there.Exit);
        Assert.Contains("opens from inside no longer said", there.Out);
        Assert.Contains("[exit-locks-in]", there.Out);
        Assert.Contains("new      ", there.Out);

        var back = CliRun.In(folder.Path, "", "compare", "b.unit", "a.unit");
        Assert.Contains("gone     ", back.Out);
        Assert.DoesNotContain("new      ", back.Out);
    }

    [Fact]
    public void For_programs_the_details_are_told_one_by_one()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Plans.Good);
        folder.Write(
            "b.unit",
            Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal));
        using var document =
            System.Text.Json.JsonDocument.Parse(CliRun.In(folder.Path, "", "compare", "a.unit", "b.unit", "--output", "json").Out);
        var change = document.RootElement.GetProperty("changes")[0];
        Assert.Equal("changed", change.GetProperty("change").GetString());
        var detail = Assert.Single(change.GetProperty("details").EnumerateArray());
        Assert.Equal(
            ("opens from inside", "yes", null),
            (detail.GetProperty("word").GetString(), detail.GetProperty("was").GetString(), detail.GetProperty("is").GetString()));
        Assert.Equal("exit-locks-in", document.RootElement.GetProperty("findings").GetProperty("new")[0].GetProperty("rule").GetString());
    }

    [Fact]
    public void The_same_file_twice_does_not_differ()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Plans.Good);
        Assert.Contains("nothing differs", CliRun.In(folder.Path, "", "compare", "a.unit", "a.unit").Out);
    }

    [Theory]
    [InlineData("missing.unit", 2)]
    [InlineData("broken.unit", 1)]
    public void What_cannot_be_read_is_said_and_nothing_is_compared(string file, int exit)
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Plans.Good);
        folder.Write("broken.unit", Plans.Broken);
        var run = CliRun.In(folder.Path, "", "compare", "a.unit", file);
        Assert.Equal(exit, run.Exit);
        Assert.Contains(file, run.Error);
        Assert.Empty(run.Out);
    }

    [Fact]
    public void Draw_clouds_what_changed_since_another_revision()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Plans.Good);
        folder.Write(
            "b.unit",
            Plans.Good.Replace("swings out, closes itself, opens from inside", "swings out, closes itself", StringComparison.Ordinal));

        CliRun.In(folder.Path, "", "draw", "b.unit", "--since", "a.unit", "--sheets", "1", "--out", ".");
        string svg = File.ReadAllText(folder.At("b-1-general-arrangement.svg"));
        Assert.Contains("<title>change:1</title>", svg);
        Assert.Contains("Changes since", svg);

        CliRun.In(folder.Path, "", "draw", "b.unit", "--sheets", "1", "--out", ".");
        Assert.DoesNotContain("change:1", File.ReadAllText(folder.At("b-1-general-arrangement.svg")));
    }

    [Theory]
    [InlineData("missing.unit")]
    [InlineData("broken.unit")]
    public void Draw_says_why_a_revision_cannot_be_compared_with(string since)
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", Plans.Good);
        folder.Write("broken.unit", Plans.Broken);
        var run = CliRun.In(folder.Path, "", "draw", "a.unit", "--since", since, "--out", "out");
        Assert.Equal(2, run.Exit);
        Assert.Contains(since, run.Error);
        Assert.False(Directory.Exists(folder.At("out")));
    }
}
