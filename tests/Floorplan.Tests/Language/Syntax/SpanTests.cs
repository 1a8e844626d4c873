using CsCheck;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Syntax;

public class SpanTests
{
    [Fact]
    public void Details_lie_in_their_statement_and_statements_follow_one_another() => PlanText.All.Sample(text =>
    {
        int end = 0;
        foreach (var statement in Sample.Parse(text).Statements)
        {
            Assert.True(statement.Span.Start >= end, "statements overlap");
            end = statement.Span.End;
            Assert.True(end <= text.Length);
            Assert.Equal(statement.Span.Start, statement.Keyword.Span.Start);
            Assert.True(Within(statement.HeadSpan, statement.Span));
            Assert.All(statement.Details, d => Assert.True(Within(d.Span, statement.Span)));
            Assert.True(statement.Name is null || Within(statement.Name.Span, statement.HeadSpan));
            Assert.True(statement.Label is null || Within(statement.Label.Span, statement.HeadSpan));
        }
    }, iter: 1000);

    [Fact]
    public void Mistakes_point_into_the_text() => PlanText.All.Sample(text => Sample.Parse(text).Diagnostics.All(d =>
        d.Span.Start >= 0 && d.Span.End <= text.Length && (d.Related ?? []).All(r => r.Span.End <= text.Length)), iter: 1000);

    [Fact]
    public void A_name_is_spanned_by_its_own_letters() => Assert.All(Sample.Parse(Sample.EveryDetail).Statements, s =>
    {
        if (s.Name is { } name)
        {
            Assert.Equal(name.Text, name.Span.Value);
        }
    });

    private static bool Within(Floorplan.Language.Text.SourceSpan part, Floorplan.Language.Text.SourceSpan whole)
        => part.Start >= whole.Start && part.End <= whole.End;
}
