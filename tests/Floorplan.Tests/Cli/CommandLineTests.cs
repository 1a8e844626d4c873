using Xunit;

namespace Floorplan.Tests.Cli;

public class CommandLineTests
{
    [Fact]
    public void Help_names_every_command_for_people_and_hides_the_rest()
    {
        var run = CliRun.Of("--help");
        Assert.Equal(0, run.Exit);
        Assert.All(["new", "check", "draw", "explain", "rules", "format"], c => Assert.Matches($"(?m)^  {c} ", run.Out));
        Assert.DoesNotContain("gallery", run.Out);
    }

    [Fact]
    public void Version_is_one_line()
    {
        var run = CliRun.Of("--version");
        Assert.Equal(0, run.Exit);
        Assert.Matches(@"^\d+\.\d+\.\d+\S*\n$", run.Out);
    }

    [Fact]
    public void Nothing_asked_shows_help_and_could_not_run()
    {
        var run = CliRun.Of();
        Assert.Equal(2, run.Exit);
        Assert.Contains("Commands:", run.Out);
    }

    [Theory]
    [InlineData("did you mean `check`?", "chek", "a.unit")]
    [InlineData("there is no command help", "help")]
    [InlineData("floorplan check a.unit says what is wrong with it", "a.unit")]
    [InlineData("there is no option --outptu; did you mean `--output`?", "check", "a.unit", "--outptu", "json")]
    [InlineData("Required argument 'FILE'", "check")]
    [InlineData("'text' 'markdown'", "check", "a.unit", "--output", "xml")]
    [InlineData("exclude each other", "format", "a.unit", "--check", "--stdout")]
    [InlineData("there is no such file", "check", "@a.unit")]
    [InlineData("- is standard input, which can be read once only", "check", "-", "-")]
    [InlineData("- is standard input, which can be read once only", "format", "a.unit", "-", "-")]
    [InlineData("- is standard input, which can be read once only", "compare", "-", "-")]
    [InlineData("- is standard input, which can be read once only", "draw", "-", "--since", "-")]
    public void A_command_line_that_cannot_run_exits_with_2_and_says_why(string sentence, params string[] args)
    {
        var run = CliRun.Of(args);
        Assert.Equal(2, run.Exit);
        Assert.Contains(sentence, run.Error);
    }
}
