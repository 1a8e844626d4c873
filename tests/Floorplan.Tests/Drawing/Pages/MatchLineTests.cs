using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Pages;

/// <summary>A plan that is too long for the paper is drawn in parts, which are laid together at their match lines.</summary>
public sealed class MatchLineTests
{
    private const double Near = 0.01;

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
        Assert.All(lines.GroupBy(l => l.Number), pair => Assert.Equal([pair.Key, pair.Key + 1], pair.Select(l => l.GoesOn).Order()));
        Assert.Equal(Enumerable.Range(1, lines.Count / 2), lines.Select(l => l.Number).Distinct().Order());
    }

    /// <summary>What one part draws up to a match line, the other draws on from there, at the same height and with the same pen.</summary>
    [Theory, MemberData(nameof(Plans))]
    public void What_crosses_a_match_line_meets_on_both_parts(int sheet)
    {
        foreach (var pair in Lines(Set.Value.OfSheet(sheet)).GroupBy(l => l.Number))
        {
            var ends = pair.Select(l => Ends(l).Distinct().Order().ToList()).ToList();
            Assert.Contains(ends[0], e => e.StartsWith("wall:shell", StringComparison.Ordinal));
            Assert.Equal(ends[0], ends[1]);
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
            foreach (var line in page.Items.OfType<LineItem>().Where(l => l.Group == "match line"))
            {
                // Its words stand along it.
                var words = page.Items.OfType<TextItem>().Where(t => t.Group == "match line" && t.Degrees == 90)
                    .Where(t => t.At.Y > line.From.Y && t.At.Y <= line.To.Y).MinBy(t => Math.Abs(t.At.X - line.From.X))!;
                string[] said = words.Text.Split(' ', ',');
                found.Add(new MatchLine(page, line, int.Parse(said[2]), int.Parse(said[^1])));
            }
        }

        return found;
    }

    /// <param name="GoesOn">The part that the words name.</param>
    private sealed record MatchLine(SheetScene Page, LineItem Line, int Number, int GoesOn);
}
