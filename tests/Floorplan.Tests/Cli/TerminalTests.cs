using Xunit;

namespace Floorplan.Tests.Cli;

public class TerminalTests
{
    private const char Escape = '\u001b';

    [Fact]
    public void Piped_output_has_no_colour_and_is_not_wrapped()
    {
        var run = CliRun.Of("rules");
        Assert.DoesNotContain(Escape, run.Out);
        Assert.Contains(run.Out.Split('\n'), l => l.Length > 100);
    }

    [Fact]
    public void A_terminal_gets_colour_and_prose_wrapped_at_its_width()
    {
        var run = CliRun.InColour("rules");
        Assert.Contains(Escape, run.Out);
        Assert.Equal(0, run.Exit);
    }

    [Fact]
    public void Errors_on_a_terminal_are_in_colour_too() => Assert.Contains(Escape, CliRun.InColour("explain", "nothing-like-it").Error);
}
