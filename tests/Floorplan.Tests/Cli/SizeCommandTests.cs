using System.Text.Json;
using Floorplan.Tests.Architecture;
using Xunit;

namespace Floorplan.Tests.Cli;

public sealed class SizeCommandTests
{
    [Theory]
    [InlineData("fish-20ft")]
    [InlineData("game-trailer")]
    [InlineData("goat-dairy-shed")]
    [InlineData("poultry-40ft")]
    [InlineData("vegetable-l-shed")]
    [InlineData("empty-start")]
    public void Every_template_is_sized(string template)
    {
        var run = CliRun.In(Repository.Root, "", "size", $"templates/{template}.unit");
        Assert.Equal(0, run.Exit);
        Assert.Equal("", run.Error);
        Assert.Equal(template != "empty-start", run.Out.Contains("Water\n", StringComparison.Ordinal));
        Assert.DoesNotContain("NaN", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", run.Out, StringComparison.Ordinal);
    }

    /// <summary>By hand: 2 gpm of the cones' 2.7 h are about 320 gal; the working shows both numbers and the line of the plan.</summary>
    [Fact]
    public void The_working_can_be_followed()
    {
        var run = CliRun.In(Repository.Root, "", "size", "templates/poultry-40ft.unit", "--working");
        Assert.Matches(@"water that runs through it \(cones\) = \d+ gal\n  flow x time in use\n  = 2 gpm x [\d.]+ h\n", run.Out);
        Assert.Matches(@"flow of cones cold 2 gpm: line \d+ of the plan", run.Out);
    }

    [Fact]
    public void For_programs_every_answer_has_its_figure()
    {
        using var document = JsonDocument.Parse(CliRun.In(Repository.Root, "", "size", "templates/fish-20ft.unit", "--output", "json").Out);
        foreach (var subject in document.RootElement.GetProperty("subjects").EnumerateArray())
        {
            var names = subject.GetProperty("figures").EnumerateArray().Select(f => f.GetProperty("name").GetString()).ToHashSet();
            Assert.All(
                subject.GetProperty("answers").EnumerateArray().Where(a => a.GetProperty("figure").ValueKind == JsonValueKind.String),
                a => Assert.Contains(a.GetProperty("figure").GetString(), names));
        }
    }

    [Fact]
    public void A_text_with_mistakes_is_not_sized()
    {
        var run = CliRun.WithInput("plan \"A\"\nroom r", "size", "-");
        Assert.Equal(1, run.Exit);
        Assert.Contains("nothing is sized until the text is mended", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_file_says_what_it_lacks()
    {
        var run = CliRun.WithInput("", "size", "-");
        Assert.NotEqual(0, run.Exit);
        Assert.NotEqual("", run.Error);
    }
}
