using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Diagnostics;

public class DiagnosticTextTests
{
    [Fact]
    public void The_line_is_shown_and_underlined_with_a_way_out() => Assert.Equal(
        """
        unit.plan:2:3: error: `plase` is not a detail of `station` [unknown-detail]
            2 |   plase against north wall
              |   ^^^^^
          mend: did you mean `place`?

        """,
        DiagnosticText.Write(Sample.Parse("station a in b\n  plase against north wall").Diagnostics.Single()));

    [Fact]
    public void A_second_place_is_shown_too() => Assert.Equal(
        """
        unit.plan:3:3: error: `size` is said twice in this `station` [said-twice]
            3 |   size 3 x 4
              |   ^^^^
          unit.plan:2:3: first said here
            2 |   size 1 x 2
              |   ^^^^
          mend: keep one of them

        """,
        DiagnosticText.Write(Sample.Parse("station a in b\n  size 1 x 2\n  size 3 x 4").Diagnostics.Single()));

    [Fact]
    public void A_long_line_is_cut_round_the_place()
    {
        var source = new SourceText(new string('a', 500) + " wrong " + new string('b', 500), "unit.plan");
        string[] lines = DiagnosticText.Underlined(new SourceSpan(source, 501, 5)).Split('\n');
        Assert.InRange(lines[0].Length, 50, 130);
        Assert.Equal("wrong", lines[0].Substring(lines[1].IndexOf('^'), 5));
        Assert.Equal(5, lines[1].Count(c => c == '^'));
    }

    [Fact]
    public void A_console_cannot_be_steered_by_the_text()
    {
        var source = new SourceText("a \u001B[31mred\u202Eder\u0007", "\u001B]0;evil\u0007.plan");
        string shown = DiagnosticText.Write(new Diagnostic(Severity.Error, "x", "found `\u001B[2J`", new SourceSpan(source, 2, 3)));
        Assert.DoesNotContain(shown, c => char.IsControl(c) && c != '\n');
        Assert.DoesNotContain('\u202E', shown);
    }

    [Fact]
    public void A_tab_keeps_its_column()
    {
        string[] lines = DiagnosticText.Underlined(new SourceSpan(new SourceText("\tsize", "unit.plan"), 1, 4)).Split('\n');
        Assert.Equal(lines[0].IndexOf("size", StringComparison.Ordinal), lines[1].IndexOf('^'));
    }

    [Fact]
    public void Any_mistake_can_be_shown() => CsCheck.Check.Sample(PlanText.All, text =>
    {
        foreach (var mistake in Sample.Parse(text).Diagnostics)
        {
            Assert.Contains('^', DiagnosticText.Write(mistake));
        }
    }, iter: 500);
}
