using System.Xml.Linq;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>The pictures that <c>day</c> writes, and what it says where it writes none.</summary>
public sealed class DayPictureTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public DayPictureTests() => folder.Write("a.unit", DrawnPlans.Text("fish-20ft"));

    [Theory]
    [InlineData("day.svg", "--animate", "day.svg")]
    [InlineData("day.svg", "--animate", "day.svg", "--from", "1:00", "--to", "1:30", "--speed", "30")]
    [InlineData("still.svg", "--animate", "still.svg", "--at", "1:10")]
    [InlineData("chart.svg", "--chart", "chart.svg")]
    [InlineData("pace.svg", "--chart", "pace.svg", "--vary", "crew.filleting=1..4")]
    [InlineData("pace.svg", "--chart", "pace.svg", "--vary", "crew.filleting=1..4", "--vary", "crew.receiving=1..2")]
    public void Pictures_are_written_and_named(string file, params string[] asked)
    {
        var run = Day(asked);
        Assert.Equal(("", 0), (run.Error, run.Exit));
        Assert.Equal($"wrote {file}\n", run.Out.ReplaceLineEndings("\n"));
        Assert.Equal("svg", XDocument.Load(folder.At(file)).Root!.Name.LocalName);
    }

    [Theory]
    [InlineData("--chart", "chart.png")]
    [InlineData("--animate", "still.png", "--at", "0:30")]
    public void Stills_and_charts_can_be_png(params string[] asked)
    {
        Assert.Equal(0, Day(asked).Exit);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(folder.At(asked[1]))[..4]);
    }

    [Theory]
    [InlineData("ends neither in .svg nor in .png", "--chart", "chart.jpg")]
    [InlineData("a png stands still: say which moment", "--animate", "day.png")]
    [InlineData("say where to write it with --animate", "--at", "1:00")]
    [InlineData("say one of both", "--animate", "day.svg", "--at", "1:00", "--to", "2:00")]
    [InlineData("--to is not later than --from", "--animate", "day.svg", "--from", "1:00", "--to", "0:30")]
    [InlineData("is after the end of the day: all is out at ", "--animate", "day.svg", "--at", "9:40")]
    [InlineData("is after the end of the day", "--animate", "day.svg", "--from", "20:00")]
    [InlineData("is not hours and minutes from the start of work, such as 1:40", "--animate", "day.svg", "--at", "1:75")]
    [InlineData("is not a number from 1 to 3600", "--animate", "day.svg", "--speed", "0")]
    [InlineData("--vary makes many runs", "--animate", "day.svg", "--vary", "crew.filleting=1..2")]
    [InlineData(
        "each is a line of the chart: at most 12", "--chart", "day.svg", "--vary", "crew.filleting=1..2", "--vary", "crew.receiving=1..13")]
    [InlineData("so it is not written over", "--chart", "a.unit.svg", "--link")]
    public void What_cannot_be_written_is_told_and_nothing_is(string sentence, params string[] asked)
    {
        if (asked[^1] == "--link")
        {
            // The plan itself, by a name that ends as a picture does.
            folder.Write("a.unit.svg", DrawnPlans.Text("fish-20ft"));
            var over = CliRun.In(folder.Path, "", "day", "a.unit.svg", "--chart", "a.unit.svg");
            Assert.Equal(2, over.Exit);
            Assert.Contains(sentence, over.Error, StringComparison.Ordinal);
            Assert.Equal(DrawnPlans.Text("fish-20ft"), File.ReadAllText(folder.At("a.unit.svg")));
            return;
        }

        var run = Day(asked);
        Assert.Equal(2, run.Exit);
        Assert.Contains(sentence, run.Error, StringComparison.Ordinal);
        Assert.Equal(["a.unit"], folder.Files);
    }

    [Fact]
    public void A_day_that_cannot_be_run_has_no_picture_but_says_what_is_missing()
    {
        folder.Write("b.unit", DrawnPlans.Text("empty-start"));
        var run = CliRun.In(folder.Path, "", "day", "b.unit", "--chart", "b.svg");
        Assert.Equal(2, run.Exit);
        Assert.Contains("The day was not judged", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("b.svg", folder.Files);
    }

    public void Dispose() => folder.Dispose();

    private CliRun Day(string[] asked) => CliRun.In(folder.Path, "", ["day", "a.unit", .. asked]);
}
