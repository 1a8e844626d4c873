using System.Text.RegularExpressions;
using Floorplan.Drawing.Sheets;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Frames;

/// <summary>
/// A wished paper or scale that cannot hold a sheet gives no sheet and a sentence. Before, 11 x 17 in gave the flow sheet at 1:480.
/// </summary>
public sealed partial class SheetWishesTests
{
    [Theory]
    [InlineData("paper 11x17"), InlineData("paper letter"), InlineData("paper tabloid"), InlineData("paper ANSI B")]
    [InlineData("paper A3\n  scale 1:25"), InlineData("scale 1:10")]
    public void What_does_not_hold_the_sheet_is_told_with_what_would(string wish)
    {
        var made = SheetSet.Make(DrawnPlans.Request(With(wish)), [2]);
        Assert.Empty(made.Sheets);
        var told = Assert.Single(made.NotDrawn);
        Assert.Contains("sheet 2 (Flow and hygiene zones) is not drawn: it does not fit on", told.Message);
        Assert.StartsWith("sheet 2", told.Span.Value);

        var ways = Way().Matches(told.WayOut).Select(m => m.Groups[1].Value).ToList();
        Assert.NotEmpty(ways);
        string better = string.Join("\n  ", told.WayOut.Contains(" with ", StringComparison.Ordinal) ? ways.Take(2) : ways.Take(1));
        Assert.Single(SheetSet.Make(DrawnPlans.Request(With(better)), [2]).Sheets);
    }

    [Theory]
    [InlineData("paper ANSI D", 22 * 25.4), InlineData("paper A1", 594), InlineData("paper 34 x 44 in\n  scale 1:32", 34 * 25.4)]
    public void What_holds_the_sheet_is_drawn_on_it(string wish, double height)
    {
        var made = SheetSet.Make(DrawnPlans.Request(With(wish)), [2]);
        Assert.Empty(made.NotDrawn);
        Assert.Equal(height, Assert.Single(made.Sheets).HeightMm, 3);
    }

    private static string With(string wish) => $"{DrawnPlans.Text("poultry-40ft")}\nsheet 2\n  {wish}\n";

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Way();
}
