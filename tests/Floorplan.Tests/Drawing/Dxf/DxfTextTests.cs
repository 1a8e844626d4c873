using Floorplan.Drawing.Dxf;
using Floorplan.Drawing.Scene;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Dxf;

public class DxfTextTests
{
    [Theory]
    [InlineData("Bench 2 (left)", "Bench 2 (left)")]
    [InlineData("90\u00B0 \u00B10 \u00D850", "90%%d %%p0 %%c50")]
    [InlineData("1200\u00D7600, 3.3 m\u00B2, 7'-3\u00A03/4\"\u2026", "1200x600, 3.3 m2, 7'-3 3/4\"...")]
    [InlineData("caf\u00E9", "caf\\U+00E9")]
    [InlineData("5%\u00B0", "5% %%d")]
    [InlineData("\\U+0041", "\\U+005CU+0041")]
    [InlineData("2 % fall", "2 % fall")]
    [InlineData("%%d", "% %d")]
    [InlineData("a\r\n  0\nEOF", "a    0 EOF")]
    [InlineData("\U0001F41F", "\\U+FFFD")]
    public void A_text_becomes_one_line_of_ascii_without_codes(string text, string written) => Assert.Equal(written, DxfText.Escape(text));

    [Fact]
    public void Every_line_is_plain_ascii_whatever_a_name_holds()
    {
        const string Name = "\u0000\u001b\n\u202E\u6C34\U0001F41F\uD800 end";
        var sheet =
            new SheetScene("x", Name, Name, 100, 100, [new TextItem(Name, new(10, 10), 2.5, TextAnchor.Start, "A-ANNO-TEXT", Name)]);
        string dxf = DxfWriter.Write(sheet);
        Assert.All(dxf, c => Assert.True(c is '\n' or (>= ' ' and <= '~')));
        Assert.Equal(0, dxf.Count(c => c == '\n') % 2);
    }

    [Fact]
    public void The_same_plan_gives_the_same_text()
        => Assert.Equal(DrawnPlans.Template("fish-20ft").Select(DxfWriter.Write), DrawnPlans.Template("fish-20ft").Select(DxfWriter.Write));
}
