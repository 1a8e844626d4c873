using Floorplan.Drawing.Lettering;
using Xunit;

namespace Floorplan.Tests.Drawing.Lettering;

public class TextWrapTests
{
    [Theory]
    [InlineData("door d-cutting-number-4 swings", new[] { "door d-cutting-", "number-4 swings" })]
    [InlineData("rest of wall is 7'-4\" long", new[] { "rest of wall is", "7'-4\" long" })]
    [InlineData("washing tall half-high wall", new[] { "washing tall", "half-high wall" })]
    public void Long_names_are_broken_behind_a_hyphen_and_lengths_and_short_words_never(string text, string[] lines)
    {
        double width = TextMeasure.Width("door d-cutting-nu", 2.5);
        Assert.Equal(lines, TextWrap.Lines(text, width, 2.5));
    }

    [Theory]
    [InlineData("drain, power 230 V 1.1 kW", new[] { "drain, power 230 V", "1.1 kW" })]
    [InlineData("the walk beside is 656 mm", new[] { "the walk beside is", "656 mm" })]
    [InlineData("it takes 12 m2, and more", new[] { "it takes 12 m2, and", "more" })]
    [InlineData("1234567890123456 mm", new[] { "1234567890123456", "mm" })]
    public void A_figure_is_not_parted_from_its_unit_while_there_is_another_place_to_break(string text, string[] lines)
        => Assert.Equal(lines, TextWrap.Lines(text, TextMeasure.Width("the walk beside is 656", 2.5), 2.5));

    [Fact]
    public void Nothing_of_a_text_is_left_out_and_no_line_is_too_wide()
    {
        const string text = "Gutting-and-washing-table-of-stainless-steel by the second door, cut 1'-10 1/2\" from cutting-hall-north";
        for (double width = 6; width < 120; width += 1.7)
        {
            var lines = TextWrap.Lines(text, width, 2.5);
            Assert.Equal(text.Replace(" ", ""), string.Concat(lines).Replace(" ", ""));
            Assert.All(lines, l => Assert.True(TextMeasure.Width(l, 2.5) <= width, l));
        }
    }
}
