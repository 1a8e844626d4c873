using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Diagnostics;

public class DiagnosticTextTests
{
    [Fact]
    public void The_line_is_shown_and_marked_with_a_way_out() => Assert.Equal(
        """
        unit.unit:2:3: error: `plase` is not a detail of `station` [unknown-detail]
          line 2: >>plase<< against north wall
          mend: did you mean `place`?

        """,
        DiagnosticText.Write(Sample.Parse("station a in b\n  plase against north wall").Diagnostics.Single()));

    [Fact]
    public void A_second_place_is_shown_too() => Assert.Equal(
        """
        unit.unit:3:3: error: `size` is said twice in this `station` [said-twice]
          line 3: >>size<< 3 x 4
          unit.unit:2:3: first said here
          line 2: >>size<< 1 x 2
          mend: keep one of them

        """,
        DiagnosticText.Write(Sample.Parse("station a in b\n  size 1 x 2\n  size 3 x 4").Diagnostics.Single()));

    [Fact]
    public void A_long_line_is_cut_round_the_place()
    {
        var source = new SourceText(new string('a', 500) + " wrong " + new string('b', 500), "unit.unit");
        var shown = Excerpt.Of(new SourceSpan(source, 501, 5));
        Assert.InRange(shown.Text.Length, 50, 130);
        Assert.Equal(">>wrong<<", shown.Place);
        Assert.EndsWith("… ", shown.Before.Replace("a", "", StringComparison.Ordinal));
        Assert.EndsWith("bbb…", shown.After);
    }

    [Fact]
    public void A_console_cannot_be_steered_by_the_text()
    {
        var source = new SourceText("a \u001B[31mred\u202Eder\u0007", "\u001B]0;evil\u0007.unit");
        string shown = DiagnosticText.Write(new Diagnostic(Severity.Error, "x", "found `\u001B[2J`", new SourceSpan(source, 2, 3)));
        Assert.DoesNotContain(shown, c => char.IsControl(c) && c != '\n');
        Assert.DoesNotContain('\u202E', shown);
    }

    [Fact]
    public void A_tab_before_the_place_is_no_matter()
        => Assert.Equal("  line 1: >>size<< 3", Excerpt.Of(new SourceSpan(new SourceText("\tsize 3", "unit.unit"), 1, 4)).Text);

    [Fact]
    public void A_whole_line_needs_no_arrows()
        => Assert.Equal("  line 1: size 3", Excerpt.Of(new SourceSpan(new SourceText("  size 3", "unit.unit"), 2, 6)).Text);

    [Fact]
    public void What_lacks_at_the_end_of_a_line_is_marked_there()
        => Assert.Equal("  line 1: size 3 x>><<", Excerpt.Of(new SourceSpan(new SourceText("size 3 x\nplace", "unit.unit"), 8, 0)).Text);

    [Fact]
    public void A_place_of_several_lines_is_marked_in_its_first()
        => Assert.Equal(
            "  line 1: room >>a<<", Excerpt.Of(new SourceSpan(new SourceText("room a\n  floor steel", "unit.unit"), 5, 12)).Text);

    [Fact]
    public void Any_mistake_can_be_shown() => CsCheck.Check.Sample(PlanText.All, text =>
    {
        foreach (var mistake in Sample.Parse(text).Diagnostics)
        {
            Assert.Matches(@"(?m)^  line \d+: ", DiagnosticText.Write(mistake));
        }
    }, iter: 500);
}
