using CsCheck;
using Floorplan.Language.Formatting;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Formatting;

public class FormatterTests
{
    [Fact]
    public void Details_line_up_and_comments_stay() => Assert.Equal(
        """
        # A small unit


        station a "Bench" in b  # the old one
          # bought used
          size     1200 x 600
          workers  2 north


        # the way
        flow product
          a -> b      by hand

        """,
        Format("# A small unit\r\n\r\n\r\n\rstation a \"Bench\" in b # the old one\n\t# bought used\n      size 1200   x 600  \n      "
            + "workers\t2 north\n\n\n\n\n\n# the way\nflow product\n    a -> b      by hand"));

    [Fact]
    public void Long_detail_words_move_the_column()
        => Assert.Equal("day\n  crew        kill 2\n  changeover  10 min\n", Format("day\n crew kill 2\n changeover 10 min\n"));

    [Fact]
    public void Head_statements_have_a_wider_column_and_two_word_details_stay_together() => Assert.Equal(
        "plan \"A\"\n  number    A-1\n  drawn by  \"P. Quillfeather\"\nshell container 20 ft\n  true north  20 degrees\n  doors       "
            + "west\n",
        Format("plan \"A\"\n  number A-1\n  drawn   by \"P. Quillfeather\"\nshell container 20 ft\n  true north 20 degrees\n  doors "
            + "west\n"));

    [Fact]
    public void Formatting_twice_changes_nothing_more() => PlanText.All.Sample(text =>
    {
        string once = Format(text);
        return Format(once) == once;
    }, iter: 2000);

    [Fact]
    public void The_meaning_stays() => PlanText.All.Sample(text =>
    {
        Assert.Equal(Meaning(Sample.Parse(text)), Meaning(Sample.Parse(Format(text))));
    }, iter: 2000);

    [Fact]
    public void Comments_and_words_stay_in_order() => PlanText.Spoilt.Sample(text => Words(Format(text)) == Words(text), iter: 500);

    [Fact]
    public void Samples_are_in_shape_but_for_their_columns()
    {
        Assert.Equal(Words(Sample.TarnFoot), Words(Format(Sample.TarnFoot)));
        Assert.All(Format(Sample.TarnFoot).Split('\n'), l => Assert.Equal(l.TrimEnd(), l));
    }

    private static string Format(string text) => Formatter.Format(Sample.Parse(text));

    /// <summary>Statements, their details and the mistakes, without places and spaces.</summary>
    private static string Meaning(SyntaxTree tree)
        => string.Join('\n', tree.Statements.Select(Of).Concat(tree.Diagnostics.Select(d => Words(d.Code + d.Message))));

    private static string Of(Statement s)
        => $"{s.Keyword.Text} {s.Name?.Text} {s.Label?.Text.TrimEnd()} "
            + $"{string.Join("; ", s.Details.Select(d => Words(d.Keyword) + "=" + Words(d.Span.Value)))}";

    private static string Words(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c) && c != '\uFEFF'));
}
