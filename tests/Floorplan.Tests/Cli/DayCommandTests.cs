using System.Text.Json;
using Floorplan.Tests.Architecture;
using Xunit;

namespace Floorplan.Tests.Cli;

public sealed class DayCommandTests
{
    [Theory]
    [InlineData("fish-20ft", "fish/h")]
    [InlineData("game-trailer", "carcasses/h")]
    [InlineData("goat-dairy-shed", "cheeses/h")]
    [InlineData("poultry-40ft", "birds/h")]
    [InlineData("vegetable-l-shed", "crates/h")]
    public void Every_template_with_a_target_says_what_it_makes(string template, string unit)
    {
        var run = CliRun.In(Repository.Root, "", "day", $"templates/{template}.unit");
        Assert.Equal(0, run.Exit);
        Assert.Equal("", run.Error);
        Assert.Contains("so it keeps up", run.Out, StringComparison.Ordinal);
        Assert.Contains(unit, run.Out, StringComparison.Ordinal);
        Assert.Contains("What one change would gain", run.Out, StringComparison.Ordinal);
        Assert.Contains("ISO 11228-1:2021", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_without_figures_is_told_what_to_write()
    {
        var run = CliRun.In(Repository.Root, "", "day", "templates/empty-start.unit");
        Assert.Equal(0, run.Exit);
        Assert.Contains("The day was not judged", run.Out, StringComparison.Ordinal);
        Assert.Contains("no time for bench: write `work 20 s each`", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void For_programs_all_figures_are_there_and_add_up()
    {
        using var document = JsonDocument.Parse(CliRun.In(Repository.Root, "", "day", "templates/fish-20ft.unit", "--output", "json").Out);
        var root = document.RootElement;
        Assert.True(root.GetProperty("judged").GetBoolean());
        Assert.Equal(200, root.GetProperty("items").GetInt32());
        Assert.True(root.GetProperty("keepsUp").GetBoolean());
        var paced = root.GetProperty("paced");
        double seconds = paced.GetProperty("seconds").GetDouble();
        Assert.All(paced.GetProperty("people").EnumerateArray(), p => Assert.Equal(
            seconds,
            new[] { "workingSeconds", "carryingSeconds", "walkingSeconds", "emptyingSeconds", "washingSeconds", "waitingSeconds" }
                .Sum(name => p.GetProperty(name).GetDouble()),
            3));
        Assert.All(
            paced.GetProperty("stations").EnumerateArray(), s => Assert.Equal(200, s.GetProperty("items").GetInt32()));
        Assert.True(root.GetProperty("gains").GetArrayLength() > 0);
    }

    [Fact]
    public void Figures_are_varied_one_with_another()
    {
        var run = CliRun.In(
            Repository.Root, "", "day", "templates/fish-20ft.unit", "--vary", "crew.filleting=1..2", "--vary", "bench.workers=1..3",
            "--output", "csv");
        Assert.Equal(0, run.Exit);
        string[] lines = run.Out.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal("crew.filleting,bench.workers,items an hour,target", lines[0].TrimEnd());
        Assert.Equal(7, lines.Length);
        Assert.StartsWith("2,3,", lines[^1], StringComparison.Ordinal);

        // As the plan is, it makes what the day says without varying.
        using var plain = JsonDocument.Parse(CliRun.In(Repository.Root, "", "day", "templates/fish-20ft.unit", "--output", "json").Out);
        string rate = lines.Single(l => l.StartsWith("2,1,", StringComparison.Ordinal)).Split(',')[2];
        Assert.Equal(
            plain.RootElement.GetProperty("ratePerHour").GetDouble(),
            double.Parse(rate, System.Globalization.CultureInfo.InvariantCulture), 2);
    }

    [Theory]
    [InlineData("crew=1..4", "crew.filleting, crew.receiving?")]
    [InlineData("foo.holds=1..4", "there are rinse, bench, packing")]
    [InlineData("bench.holds=4..1", "is not read")]
    [InlineData("bench.colour=1..4", "holds, batch, waits and workers can be")]
    [InlineData("bench.holds=1..90000", "more than 5000 runs")]
    public void What_cannot_be_varied_is_told(string asked, string told)
    {
        var run = CliRun.In(Repository.Root, "", "day", "templates/fish-20ft.unit", "--vary", asked);
        Assert.Equal(2, run.Exit);
        Assert.Equal("", run.Out);
        Assert.Contains(told, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_with_mistakes_is_not_run()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.unit", "plan \"A\"\nshell shed 4 m x 3\n");
        var run = CliRun.In(folder.Path, "", "day", "a.unit");
        Assert.Equal(1, run.Exit);
        Assert.Contains("no day is run until the text is mended", run.Error, StringComparison.Ordinal);
    }
}
