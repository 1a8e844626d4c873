using System.Text.RegularExpressions;
using Floorplan.Drawing.Sheets;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Frames;

/// <summary>
/// A small paper gives more pages. A wished scale that no number of pages can hold gives no sheet, and a sentence with what would hold it.
/// </summary>
public sealed partial class SheetWishesTests
{
    private const string Shed = """
        plan "Long shed"
          units metric
        shell shed 30000 x 6000 x 2600
        room a "Hall" clean from west to 15000
        room b "Store" dry from 15000 to east
        door d1 a to outside, west wall, centred, 1200 x 2100, swings out
        door d2 a to b, centred, 1000 x 2100, swings b
        station s1 "Bench" in a
          size 1500 x 600 x 900
          place against north wall, 4000 from west
          worker south
        """;

    [Theory]
    [InlineData("paper A4\n  scale 1:10"), InlineData("scale 1:5"), InlineData("paper letter\n  scale 1:10")]
    public void What_does_not_hold_the_sheet_is_told_with_what_would(string wish)
    {
        var made = SheetSet.Make(DrawnPlans.Request(With(Shed, wish)), [2]);
        Assert.Empty(made.Sheets);
        var told = Assert.Single(made.NotDrawn);
        Assert.Contains("sheet 2 (Flow and hygiene zones) is not drawn: it does not fit on", told.Message);
        Assert.StartsWith("sheet 2", told.Span.Value);

        var ways = Way().Matches(told.WayOut).Select(m => m.Groups[1].Value).ToList();
        Assert.NotEmpty(ways);
        string better = string.Join("\n  ", told.WayOut.Contains(" with ", StringComparison.Ordinal) ? ways.Take(2) : ways.Take(1));
        var mended = SheetSet.Make(DrawnPlans.Request(With(Shed, better)), [2]);
        Assert.Empty(mended.NotDrawn);
        Assert.NotEmpty(mended.Sheets);
    }

    /// <summary>ISO 216, ASME Y14.1 and the sizes of North American offices, all lying.</summary>
    [Theory]
    [InlineData("paper 11x17", 279.4), InlineData("paper letter", 215.9), InlineData("paper tabloid", 279.4)]
    [InlineData("paper ANSI B", 279.4), InlineData("paper A4", 210), InlineData("paper A3", 297), InlineData("paper legal", 215.9)]
    [InlineData("paper ANSI D", 22 * 25.4), InlineData("paper A1", 594), InlineData("paper 34 x 44 in\n  scale 1:32", 34 * 25.4)]
    public void What_holds_the_sheet_is_drawn_on_it_on_as_many_pages_as_it_takes(string wish, double height)
    {
        var made = SheetSet.Make(DrawnPlans.Request(With(DrawnPlans.Text("poultry-40ft"), wish)), [2]);
        Assert.Empty(made.NotDrawn);
        Assert.NotEmpty(made.Sheets);
        Assert.All(made.Sheets, p => Assert.Equal(height, p.HeightMm, 3));
        Assert.Equal(Enumerable.Range(1, made.Sheets.Count), made.Sheets.Select(p => p.Page));
        Assert.All(made.Sheets, p => Assert.Empty(SceneAudit.Faults(p)));
    }

    /// <summary>A wish for the whole set: each sheet is drawn as wished, or refused with a sentence and a way out.</summary>
    [Theory]
    [InlineData("paper A4\n  scale 1:10"), InlineData("paper letter\n  scale 1:10"), InlineData("paper A4\n  scale 1:20")]
    public void Each_sheet_of_a_set_is_drawn_as_wished_or_told(string wish)
    {
        foreach (string plan in new[] { Shed, DrawnPlans.Text("poultry-40ft"), DrawnPlans.Text("game-trailer") })
        {
            var made = SheetSet.Make(DrawnPlans.Request($"{plan}\nsheet all\n  {wish}\n"));
            int[] drawn = [.. made.Sheets.Select(p => p.Sheet).Distinct()];
            Assert.Equal(SheetSet.All.Select(s => s.Number), drawn.Concat(made.NotDrawn.Select(n => n.Sheet)).Order());
            Assert.All(made.NotDrawn, n => Assert.Contains($"sheet {n.Sheet} (", n.Message));
            Assert.All(made.NotDrawn, n => Assert.NotEmpty(n.WayOut));
            double scale = double.Parse(wish.Split("1:")[1], System.Globalization.CultureInfo.InvariantCulture);
            Assert.All(made.Sheets.Where(p => p.Items.Any(i => i.Group == "wall:shell")), p => Assert.Equal(scale, p.Denominator));
            Assert.All(made.Sheets, p => Assert.Empty(SceneAudit.Faults(p)));
        }
    }

    private static string With(string plan, string wish) => $"{plan}\nsheet 2\n  {wish}\n";

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Way();
}
