using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Mesh;
using Floorplan.Model.Space.Search;
using Floorplan.Model.Stations;
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
    /// <summary>Distance between tried points, in mm. Own assumption.</summary>
    private const double Spacing = 50;

    /// <summary>A thing is beside the route, not ahead, when it lies at more than 30 degrees from the way ahead. Own assumption.</summary>
    private const double Beside = 0.5;

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

    /// <summary>Infinity when nothing stands within <paramref name="upToMm"/> on both sides; the place is then the start of the route.</summary>
    public (double WidthMm, Coordinate At) Along(Route route, double upToMm)
    {
        var gap = Find(route, upToMm);
        return (gap.Width, gap.At);
    }

    /// <summary>The gap with the stations on its two sides (null is a wall).</summary>
    public (double Width, Coordinate At, Station? Left, Station? Right) Find(Route route, double upToMm)
    {
        var points = route.Path.Coordinates;
        var best = (Width: double.PositiveInfinity, At: points[0], Left: (Station?)null, Right: (Station?)null);
        for (int i = 0; i + 1 < points.Length; i++)
        {
            double length = points[i].Distance(points[i + 1]);
            if (length == 0)
            {
                continue;
            }

            int pieces = Math.Max(1, (int)Math.Ceiling(length / Spacing));
            for (int k = i == 0 ? 0 : 1; k <= pieces; k++)
            {
                var p = Line.At(points[i], points[i + 1], k / (double)pieces);
                var ahead = new Coordinate((points[i + 1].X - points[i].X) / length, (points[i + 1].Y - points[i].Y) / length);
                Try(p, ahead, Math.Min(upToMm, best.Width), ref best);
            }
        }

        return best;
    }

    private void Try(Coordinate p, Coordinate ahead, double upTo, ref (double Width, Coordinate At, Station? Left, Station? Right) best)
    {
        var box = new Envelope(p);
        box.ExpandBy(upTo);
        var left = new List<(Coordinate At, Station? Of)>();
        var right = new List<(Coordinate At, Station? Of)>();
        foreach (var obstacle in maps.Obstacles.Near(box))
        {
            if (obstacle.Blocks(Mover.Person.HeightMm) && !obstacle.Station.Movable)
            {
                Add(NearestOn(obstacle.Ring, p), obstacle.Station);
            }
        }

        foreach (var wall in walls.Count == 0 ? [] : walls.Query(box))
        {
            Add(Line.Nearest(wall.A, wall.B, p), null);
        }

        foreach (var l in left)
        {
            foreach (var r in right)
            {
                double width = l.At.Distance(r.At);
                bool opposed = ((l.At.X - p.X) * (r.At.X - p.X)) + ((l.At.Y - p.Y) * (r.At.Y - p.Y)) <= 0;
                if (opposed && width < best.Width && width <= upTo && !doorways.Any(d => d.Contains(l.At) && d.Contains(r.At)))
                {
                    best = (width, Line.At(l.At, r.At, 0.5), l.Of, r.Of);
                }
            }
        }

        void Add(Coordinate q, Station? of)
        {
            double dx = q.X - p.X, dy = q.Y - p.Y, distance = Math.Sqrt((dx * dx) + (dy * dy));
            double across = (ahead.X * dy) - (ahead.Y * dx);
            if (distance > FloorMesh.Same && distance <= upTo && Math.Abs(across) >= Beside * distance)
            {
                (across > 0 ? left : right).Add((q, of));
            }
        }
    }

    private static Coordinate NearestOn(List<Coordinate> ring, Coordinate p)
    {
        var best = ring[0];
        for (int i = 0; i < ring.Count; i++)
        {
            var q = Line.Nearest(ring[i], ring[(i + 1) % ring.Count], p);
            best = q.Distance(p) < best.Distance(p) ? q : best;
        }

        return best;
    }
}
