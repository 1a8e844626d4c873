using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model;
using NetTopologySuite.Geometries;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>Leaders and balloons of the plan views of a set, measured on the finished pages. One sentence for each fault.</summary>
internal static class LeaderAudit
{
    /// <summary>Sheets 1 to 5 show the plan.</summary>
    private const int LastPlanSheet = 5;

    /// <summary>A leader that runs along a wall's face is not in the next room (paper mm).</summary>
    private const double Unseen = 0.4;

    /// <summary>Two balloons with less paper between them read as one (paper mm).</summary>
    private const double Apart = 0.3;

    private static readonly GeometryFactory Factory = new();

    public static IEnumerable<string> Faults(IReadOnlyList<SheetScene> set, Plan plan)
        => set.Where(p => p.Sheet <= LastPlanSheet && p.Datum is not null)
            .SelectMany(p => Crossed(p).Concat(Rooms(p, plan)).Concat(Balloons(p)).Select(f => $"{p.Name}: {f}"));

    private static IEnumerable<string> Crossed(SheetScene page)
    {
        var leaders = Leaders(page).ToList();
        for (int i = 0; i < leaders.Count; i++)
        {
            foreach (var other in leaders.Skip(i + 1).Where(o => o.Shape.Crosses(leaders[i].Shape)))
            {
                yield return $"the leader of {leaders[i].Group} crosses that of {other.Group}";
            }
        }
    }

    private static IEnumerable<string> Rooms(SheetScene page, Plan plan)
    {
        var rooms = plan.Rooms.Where(r => !r.Floor.IsEmpty).Select(r => (r.Id, Floor: OnPaper(page, plan, r.Floor))).ToList();
        foreach (var (shape, group) in Leaders(page))
        {
            var end = shape.EndPoint;
            foreach (var (id, floor) in rooms.Where(r => r.Floor.Distance(end) > Unseen && r.Floor.Buffer(-Unseen).Intersects(shape)))
            {
                if (rooms.Exists(r => r.Floor.Distance(end) <= Unseen))
                {
                    yield return $"the leader of {group} runs over the floor of {id}";
                }
            }
        }
    }

    private static IEnumerable<string> Balloons(SheetScene page)
    {
        var balloons = page.Items.Select(i => (i.Group, Shape: Balloon(i))).Where(b => b.Shape is not null).ToList();
        for (int i = 0; i < balloons.Count; i++)
        {
            foreach (var other in balloons.Skip(i + 1).Where(o => o.Shape!.Distance(balloons[i].Shape) < Apart))
            {
                yield return $"the balloons of {balloons[i].Group} and {other.Group} touch";
            }
        }
    }

    /// <summary>The outlines of balloons are drawn by labels alone; their fill is white.</summary>
    private static Geometry? Balloon(SceneItem item) => item is AreaItem { Fill: Palette.White, Layer: Layers.Text or Layers.Finding } area
        ? Factory.CreatePolygon([.. area.Rings[0].Append(area.Rings[0][0]).Select(C)])
        : null;

    private static IEnumerable<(LineString Shape, string? Group)> Leaders(SheetScene page) => page.Items.OfType<LineItem>()
        .Where(l => l.Layer == Layers.Leader && l.From != l.To).Select(l => (Factory.CreateLineString([C(l.From), C(l.To)]), l.Group));

    private static Geometry OnPaper(SheetScene page, Plan plan, Geometry floor)
    {
        var datum = plan.Shell.Datum;
        var paper = floor.Copy();
        paper.Apply(new Transforming(c => new(
            page.Datum!.Value.X + ((c.X - datum.X.Millimetres) / page.Denominator),
            page.Datum.Value.Y - ((c.Y - datum.Y.Millimetres) / page.Denominator))));
        paper.GeometryChanged();
        return paper;
    }

    private static Coordinate C(PaperPoint p) => new(p.X, p.Y);

    private sealed class Transforming(Func<Coordinate, Coordinate> to) : ICoordinateFilter
    {
        public void Filter(Coordinate coord) => (coord.X, coord.Y) = (to(coord).X, to(coord).Y);
    }
}
