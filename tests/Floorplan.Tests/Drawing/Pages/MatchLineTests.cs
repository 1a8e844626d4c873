using System.Globalization;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Pages;

/// <summary>A plan that is too long for the paper is drawn in parts, which are laid together at their match lines.</summary>
public sealed class MatchLineTests
{
    private const double Near = 0.01;

    /// <summary>The title of a part may begin so far right of its first match line: after the north arrow, mm.</summary>
    private const double TitleIndent = 20;

    /// <summary>Benches everywhere along the hall, so that some stand across any match line.</summary>
    private static readonly string Plan = """
        plan "Long shed"
          units metric
        shell shed 40000 x 5000 x 2600
        room a "Hall" clean from west to 22000
        room b "Store" dry from 22000 to east
        partitions thickness 100
        door d1 a to outside, west wall, centred, 1200 x 2100, swings out
        door d2 a to b, centred, 1000 x 2100, swings b

        """ + string.Concat(Enumerable.Range(0, 18).Select(i => $"""
        station s{i} "Bench {i}" in {(i < 10 ? "a" : "b")}
          size 1700 x 600 x 900
          place at {(i < 10 ? 500 + (i * 2050) : 600 + ((i - 10) * 2050))}, 3800
          worker south

        """)) + "flow product\n  outside -> d1 -> s0 -> s5 -> d2 -> s12 -> s17\n";

    private static readonly Lazy<IReadOnlyList<SheetScene>> Set = new(() => DrawnPlans.Draw(Plan));

    public static TheoryData<int> Plans => [1, 2, 3, 4, 5];

    [Theory, MemberData(nameof(Plans))]
    public void Every_station_is_named_on_exactly_one_part(int sheet)
    {
        var pages = Set.Value.OfSheet(sheet);
        Assert.True(Lines(pages).Count >= 2, "the plan is in one part");
        var stations = DrawnPlans.Request(Plan).Plan.Stations;
        Assert.All(stations, s => Assert.Single(pages.Texts(), t => t.Group == "station:" + s.Id && t.Text == $"{s.Item}"));
    }

    /// <summary>Each line is on the two parts that meet there, and says on which part the plan goes on.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void Every_match_line_is_on_two_parts(int sheet)
    {
        var lines = Lines(Set.Value.OfSheet(sheet));
        Assert.All(lines, l => Assert.Equal(1, Math.Abs(l.Part - l.GoesOn)));
        Assert.All(lines, l => Assert.Single(lines, o => (o.Part, o.GoesOn) == (l.GoesOn, l.Part)));
        Assert.Equal(Enumerable.Range(1, (lines.Count / 2) + 1), lines.Select(l => l.Part).Distinct().Order());
    }

    /// <summary>What one part draws up to a match line, the other draws on from there at the same height.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void What_crosses_a_match_line_meets_on_both_parts(int sheet)
    {
        var lines = Lines(Set.Value.OfSheet(sheet));
        foreach (var line in lines.Where(l => l.GoesOn > l.Part))
        {
            var ends = Ends(line).Distinct().Order().ToList();
            Assert.Contains(ends, e => e.StartsWith("wall:shell", StringComparison.Ordinal));
            Assert.Equal(ends, Ends(lines.Single(l => (l.Part, l.GoesOn) == (line.GoesOn, line.Part))).Distinct().Order());
        }
    }

    /// <summary>Which group ends on the line, on which layer, how far down it.</summary>
    private static IEnumerable<string> Ends(MatchLine line)
    {
        double x = line.Line.From.X;
        foreach (var item in line.Page.Items.Where(i => i.Group != "match line" && i.Layer is not (Layers.FloorHatch or Layers.WallHatch)))
        {
            PaperPoint[] points = item switch
            {
                LineItem l => [l.From, l.To],
                PolylineItem p => [.. p.Points],
                _ => [],
            };
            foreach (var point in points.Where(p => Math.Abs(p.X - x) < Near && p.Y > line.Line.From.Y && p.Y < line.Line.To.Y))
            {
                yield return FormattableString.Invariant($"{item.Group} on {item.Layer}, {point.Y - line.Line.From.Y:0.00} down");
            }
        }
    }

    private static List<MatchLine> Lines(IReadOnlyList<SheetScene> pages)
    {
        var found = new List<MatchLine>();
        foreach (var page in pages)
        {
            var texts = page.Items.OfType<TextItem>().ToList();
            foreach (var line in page.Items.OfType<LineItem>().Where(l => l.Group == "match line"))
            {
                // Its words stand along it, and the title of its part stands under it.
                var words = texts.Where(t => t.Group == "match line" && t.At.Y > line.From.Y && t.At.Y <= line.To.Y)
                    .MinBy(t => Math.Abs(t.At.X - line.From.X))!;
                var title = texts.Where(t => t.Bold && t.Text.Contains(", part ", StringComparison.Ordinal) && t.At.Y > line.To.Y
                    && t.At.X < line.From.X + TitleIndent).MinBy(t => t.At.Y - line.To.Y + line.From.X - t.At.X)!;
                found.Add(new MatchLine(page, line, Number(title.Text, ", part "), Number(words.Text, ", part ")));
            }
        }

        return found;

        static int Number(string text, string after) => int.Parse(text.Split(after)[1].Split(' ')[0], CultureInfo.InvariantCulture);
    }

    /// <param name="Part">Whose edge it is.</param>
    /// <param name="GoesOn">The part that its words name.</param>
    private sealed record MatchLine(SheetScene Page, LineItem Line, int Part, int GoesOn);
}
