using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Parsing;

/// <summary>A figure that no small unit has is a slip, and is told where it stands.</summary>
public class FigureBoundTests
{
    [Theory]
    [InlineData("drain fd1 floor in a, centred, 1000 from west, 400 in", "out-of-range")]
    [InlineData("drain fd1 floor in a, centred, 1000 from west, 0 in", "size-too-small")]
    [InlineData("light a 999999999999 lux", "out-of-range")]
    [InlineData("air supply a 900000 m3/h", "out-of-range")]
    [InlineData("room a \"A\" cold\n  keep -180 C", "out-of-range")]
    [InlineData("day\n  crew a 65535", "count-out-of-range")]
    [InlineData("day\n  crew a 4294967297", "count-out-of-range")]
    [InlineData("day\n  crew a 2.5", "count-out-of-range")]
    [InlineData("day\n  elsewhere 4294967297 toilets", "count-out-of-range")]
    [InlineData("sheet 99\n  scale 1:50", "count-out-of-range")]
    [InlineData("sheet 1\n  scale 1:0", "not-a-scale")]
    [InlineData("sheet 1\n  scale 1:0.01", "not-a-scale")]
    [InlineData("sheet 1\n  paper foolscap", "unknown-word")]
    [InlineData("sheet 1\n  shows unicorns", "unknown-word")]
    public void A_figure_or_word_that_cannot_be_is_told_with_a_way_out(string text, string code)
    {
        var told = Assert.Single(Sample.Parse(text + "\n").Diagnostics);
        Assert.Equal(code, told.Code);
        Assert.Equal(text.StartsWith("sheet 99", StringComparison.Ordinal) ? 1 : text.Count(c => c == '\n') + 1, told.Span.Position.Line);
        Assert.True(told.Help is not null || code == "size-too-small", told.Message);
    }

    [Fact]
    public void A_near_name_of_a_paper_is_offered()
        => Assert.Contains("did you mean `tabloid`?", Assert.Single(Sample.Parse("sheet 1\n  paper tabliod\n").Diagnostics).Help);

    [Theory]
    [InlineData("A4"), InlineData("a0"), InlineData("letter"), InlineData("ANSI B"), InlineData("11x17"), InlineData("24 x 36 in")]
    [InlineData("legal"), InlineData("tabloid"), InlineData("Arch D")]
    public void Usual_papers_are_read(string paper) => Assert.Empty(Sample.Parse($"sheet 1\n  paper {paper}\n").Diagnostics);

    /// <summary>A bound is itself within bounds, and a little more is not.</summary>
    [Fact]
    public void Every_kind_of_quantity_has_one_bound()
    {
        Assert.Equal(QuantityBounds.Most.Count, QuantityBounds.Most.Select(m => m.Unit.Kind).Distinct().Count());
        var unbound = Enum.GetValues<QuantityKind>().Except(QuantityBounds.Most.Select(m => m.Unit.Kind));
        Assert.Equal([QuantityKind.Length, QuantityKind.Energy, QuantityKind.Money, QuantityKind.Force], unbound);
        Assert.All(QuantityBounds.Most, m => Assert.Null(QuantityBounds.Broken(m)));
        Assert.All(QuantityBounds.Most, m => Assert.Equal(m, QuantityBounds.Broken(m with { Number = m.Number * 1.01m })));
    }
}
