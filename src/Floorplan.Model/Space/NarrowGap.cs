using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Gaps;
using Floorplan.Model.Space.Search;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Model.Space;

/// <summary>
/// The narrowest gap across a route. At points along it the nearest fixed thing on the left and on the right are joined; the
/// shortest of those joins is the gap, exactly so where the route crosses the shortest join of two things. Doorways do not
/// count: their width is the door's own.
/// </summary>
internal sealed class NarrowGap
{
    /// <summary>
    /// Routes are looked at in stretches of this length, in mm, each with what stands beside it. Measured: shorter ones ask the index
    /// too often, longer ones get too much from it.
    /// </summary>
    private const double Stretch = 2000;

    private readonly Maps maps;
    private readonly STRtree<WallPiece> walls = new();
    private readonly List<Envelope> doorways;

    public NarrowGap(Plan plan, Maps maps)
    {
        this.maps = maps;
        var open = maps.Passages.Where(p => p.Opening.IsWalkable).ToList();
        foreach (var piece in Walls.Of(plan, open))
        {
            walls.Insert(piece.Box, piece);
        }

        doorways = [.. open.Select(p => p.Hole)];
        doorways.ForEach(d => d.ExpandBy(1));
    }

    /// <summary>
    /// Infinity when nothing stands within <paramref name="upToMm"/> on both sides; the place is then the start of the route.
    /// </summary>
    public (double WidthMm, Coordinate At) Along(Route route, double upToMm)
    {
        var gap = Find(route, upToMm);
        return (gap.Width, gap.At);
    }

    /// <summary>The gap with the stations on its two sides (null is a wall).</summary>
    public Gap Find(Route route, double upToMm)
    {
        var points = route.Path.Coordinates;
        var best = new Gap(double.PositiveInfinity, points[0], null, null);
        for (int i = 0; i + 1 < points.Length; i++)
        {
            double length = points[i].Distance(points[i + 1]);
            if (length == 0)
            {
                continue;
            }

            int count = Math.Max(1, (int)Math.Ceiling(length / GapStretch.Spacing));
            int step = Math.Max(1, (int)(Stretch / GapStretch.Spacing));
            for (int k = i == 0 ? 0 : 1; k <= count; k += step)
            {
                int last = Math.Min(k + step - 1, count);
                var stretch = new GapStretch(points[i], points[i + 1], count, k, last, Math.Min(upToMm, best.Width));
                Steps.Beside(Steps.Stretch);
                Gather(stretch);
                best = stretch.Narrowest(best, IsDoorway);
            }
        }

        return best;
    }

    private void Gather(GapStretch stretch)
    {
        foreach (var obstacle in maps.Obstacles.Near(stretch.Box))
        {
            if (obstacle.Blocks(Mover.Person.HeightMm) && !obstacle.Station.Movable)
            {
                stretch.Add(obstacle.Ring, obstacle.Station);
            }
        }

        foreach (var wall in walls.IsEmpty ? [] : walls.Query(stretch.Box))
        {
            stretch.Add([wall.A, wall.B], null);
        }
    }

    private bool IsDoorway(Coordinate a, Coordinate b) => doorways.Exists(d => d.Contains(a) && d.Contains(b));
}
