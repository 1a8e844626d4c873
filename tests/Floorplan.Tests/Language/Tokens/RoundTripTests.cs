using CsCheck;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Tokens;

public class RoundTripTests
{
    [Fact]
    public void Any_text_comes_back_byte_for_byte() => PlanText.All.Sample(text => Sample.Parse(text).ToText() == text, iter: 2000);

    [Theory]
    [InlineData("")]
    [InlineData("\uFEFFplan \"A\"\r\n\tunits metric\r\n\r\n# end without a line end")]
    [InlineData("plan \"A\"\n\n\n   \t \n")]
    [InlineData("\r\r\n\n\r")]
    public void Line_ends_tabs_and_a_missing_last_line_end_are_kept(string text) => Assert.Equal(text, Sample.Parse(text).ToText());

    [Fact]
    public void Tokens_lie_end_to_end() => PlanText.All.Sample(text =>
    {
        int at = 0;
        foreach (var token in Sample.Parse(text).Tokens)
        {
            Assert.Equal(at, token.Start);
            Assert.True(token.Length > 0);
            at = token.End;
        }

        Assert.Equal(text.Length, at);
    }, iter: 500);
}
