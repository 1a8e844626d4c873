using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Hatching;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Rooms;
using NetTopologySuite.Geometries;
using Xunit;

namespace Floorplan.Tests.Drawing.Hatching;

/// <summary>Hatches against NetTopologySuite's areas.</summary>
public class HatcherTests
{
    private static readonly GeometryFactory Factory = new();

    private static readonly List<HatchStyle> Styles =
        [.. Enum.GetValues<HygieneClass>().Select(c => ZoneLook.Of(c).Hatch), HatchStyle.Wall];

    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Every_line_lies_in_its_area_and_outside_its_holes_and_texts(int seed)
    {
        var random = new Random(seed);
        var outer = Star(random, new(50, 50), 25, 45);
        var hole = Star(random, new(50, 50), 5, 12);
        var style = Styles[seed % Styles.Count];
        var text = PaperBox.Around(new(30 + random.Next(40), 30 + random.Next(40)), 14, 4);

        var lines = Hatcher.Lines(new HatchArea([outer, hole], style, new Pen(0.18), "L", null), [text]).ToList();

        var area = Polygon(outer).Difference(Polygon(hole)).Buffer(style.Form == HatchForm.Dots ? 0.35 : 0.01);
        Assert.True(lines.Count > 10, $"only {lines.Count} lines");
        Assert.All(lines, l => Assert.True(area.Covers(Line(l)), $"{l.From} to {l.To}"));
        Assert.DoesNotContain(lines, l => text.IsCutBy(l.From, l.To));
    }

    [Fact]
    public void Parallel_lines_are_no_nearer_than_the_standard_allows()
    {
        // ISO 128-2: 0.7 mm between parallel lines, hatching included (references/drawing.md A1).
        Assert.All(Styles, style => Assert.True(style.Pitch >= 0.7 + DrawingStandard.Iso.Fine, $"{style}"));
    }

    private static PaperPoint[] Star(Random random, PaperPoint centre, double inner, double outer) =>
    [
        .. Enumerable.Range(0, 14).Select(i =>
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / 14);
            double r = inner + (random.NextDouble() * (outer - inner));
            return new PaperPoint(centre.X + (r * cos), centre.Y + (r * sin));
        }),
    ];

    private static Polygon Polygon(PaperPoint[] ring)
        => Factory.CreatePolygon([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X, p.Y))]);

    private static LineString Line(LineItem l) => Factory.CreateLineString([new(l.From.X, l.From.Y), new(l.To.X, l.To.Y)]);
}
