using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Views;
using Floorplan.Sizing;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Sheets.PowerLightAir;

/// <summary>Lamps at the ceiling, in the even rows that their number was worked out for: a line with a bar at each end (IEC
/// 60617).</summary>
internal sealed class LampLayer(PlanFacts facts) : PlanLayer(facts.Plan)
{
    /// <summary>A common batten, mm.</summary>
    private const double Batten = 1200;

    /// <summary>Of the bars on paper, mm.</summary>
    private const double Bar = 2;

    /// <summary>A lamp that would be shorter on paper is not drawn, mm.</summary>
    private const double Shortest = 4;

    public override IEnumerable<LegendEntry> Legend => facts.Lamps.Count > 0
        ? [new LegendEntry(
            facts.Lamps.Values.All(l => l.IsSaid) ? "lamp at the ceiling" : "lamp at the ceiling, proposed where the plan says none",
            (scene, box) => Draw(
                new SymbolBrush(scene, Standard, Layers.Legend), new(box.Left + 1, box.Centre.Y), new(box.Right - 1, box.Centre.Y)))]
        : [];

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var lamps in facts.Lamps.Values)
        {
            var brush = canvas.Brush(Layers.Light, "lamps:" + lamps.Room.Id, Band.Annotation);
            double half = Math.Min(Batten, lamps.Spacing.Along * 0.9) / 2;
            var along = lamps.RunsEast ? (X: half, Y: 0.0) : (X: 0.0, Y: half);
            foreach (var (x, y) in lamps.Places)
            {
                if (!lamps.Room.Floor.Contains(new LineString([new(x - along.X, y - along.Y), new(x + along.X, y + along.Y)])))
                {
                    continue;
                }

                var from = canvas.Transform.ToPaper(new Coordinate(x - along.X, y - along.Y));
                var to = canvas.Transform.ToPaper(new Coordinate(x + along.X, y + along.Y));
                if (PaperShapes.Length(to - from) >= Shortest)
                {
                    Draw(brush, from, to);
                }
            }
        }
    }

    private void Draw(SymbolBrush brush, PaperPoint from, PaperPoint to)
    {
        var pen = new Pen(Standard.Narrow);
        var across = from.X == to.X ? new PaperPoint(Bar / 2, 0) : new PaperPoint(0, Bar / 2);
        brush.Line(from, to, pen);
        brush.Line(from - across, from + across, pen);
        brush.Line(to - across, to + across, pen);
    }
}
