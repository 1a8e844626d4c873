using Floorplan.Model.Openings;
using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Mesh;
using Floorplan.Model.Space.Search;
using Floorplan.Model.Stations;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;
using NetTopologySuite.Operation.Distance;

namespace Floorplan.Model.Space;

/// <summary>How far hands go from a standing place to a target, round tall things and walls.</summary>
internal sealed class ReachFinder(Plan plan, Maps maps)
{
    /// <summary>
    /// Farther than this nothing is within reach, in mm, and the straight distance is given. Own assumption, more than three times an
    /// arm (ANSUR II).
    /// </summary>
    private const double Farthest = 3000;

    /// <summary>Touching by less than this is not passing through, in mm.</summary>
    private const double Graze = 0.5;

    private readonly Lazy<STRtree<WallPiece>> walls = new(() => Index(
        Walls.Of(plan, [.. maps.Passages.Where(p => p.Opening.Kind is not (OpeningKind.Window or OpeningKind.Vent))]), w => w.Box));

    private readonly Lazy<STRtree<Coordinate>> wallCorners = new(() => Index(WallCorners(plan, maps), c => new Envelope(c)));

    public double Reach(Station station, WorkerPlace worker, Geometry target, double targetHeightMm)
    {
        if (target.IsEmpty)
        {
            return double.PositiveInfinity;
        }

        var from = worker.Front.Coordinate;
        var start = plan.Shell.Outside.Factory.CreatePoint(from);
        var near = DistanceOp.NearestPoints(start, target)[1];
        double straight = from.Distance(near);
        if (straight <= Graze || straight > Farthest)
        {
            return straight;
        }

        var box = new Envelope(from);
        box.ExpandToInclude(near);
        box.ExpandBy(Farthest);
        var things = Things(station, target, targetHeightMm, from, box);
        var walls = this.walls.Value.Query(box);
        if (Clear(from, near, things, walls))
        {
            return straight;
        }

        var corners = new List<Coordinate> { from };
        corners.AddRange(things.SelectMany(t => t).Concat(wallCorners.Value.Query(box)).Where(c => c.Distance(from) <= Farthest));
        return Round(corners, target, things, walls);
    }

    private static STRtree<T> Index<T>(IEnumerable<T> items, Func<T, Envelope> box)
    {
        var index = new STRtree<T>();
        foreach (var item in items)
        {
            index.Insert(box(item), item);
        }

        index.Build();
        return index;
    }

    /// <summary>
    /// What stands in the way of an arm between work height and target height; never the bench itself, nor what the target is on.
    /// </summary>
    private List<List<Coordinate>> Things(Station station, Geometry target, double targetHeight, Coordinate from, Envelope box)
    {
        double work = station.WorkHeight.Millimetres;
        return
        [
            .. maps.Obstacles.Near(box)
                .Where(o => o.Station.Id != station.Id
                    && o.Station.Top.Millimetres > work
                    && o.Station.Bottom.Millimetres < Math.Max(work, targetHeight))
                .Where(o => !Through(o.Ring, from, from, 0) && o.Station.Footprint.Distance(target) > Graze)
                .Select(o => o.Ring),
        ];
    }

    /// <summary>Shortest way over the corners of what is in the way.</summary>
    private static double Round(List<Coordinate> corners, Geometry target, List<List<Coordinate>> things, IList<WallPiece> walls)
    {
        var onTarget = target.Coordinates;
        var distance = new double[corners.Count];
        Array.Fill(distance, double.PositiveInfinity, 1, corners.Count - 1);
        var queue = new PriorityQueue<int, double>();
        queue.Enqueue(0, 0);
        var done = new bool[corners.Count];
        double best = double.PositiveInfinity;
        while (queue.TryDequeue(out int at, out double walked) && walked < best)
        {
            if (done[at])
            {
                continue;
            }

            done[at] = true;
            var here = corners[at];
            var near = DistanceOp.NearestPoints(target.Factory.CreatePoint(here), target)[1];
            foreach (var end in onTarget.Append(near))
            {
                if (walked + here.Distance(end) < best && Clear(here, end, things, walls))
                {
                    best = walked + here.Distance(end);
                }
            }

            for (int next = 0; next < corners.Count; next++)
            {
                double length = walked + here.Distance(corners[next]);
                if (!done[next] && length < distance[next] && length < best && Clear(here, corners[next], things, walls))
                {
                    distance[next] = length;
                    queue.Enqueue(next, length);
                }
            }
        }

        return best;
    }

    /// <summary>Where an arm can go round a wall: edges of openings, and corners that stand out into a room.</summary>
    private static IEnumerable<Coordinate> WallCorners(Plan plan, Maps maps)
    {
        foreach (var p in maps.Passages)
        {
            yield return p.Point(p.Low, p.Near);
            yield return p.Point(p.Low, p.Far);
            yield return p.Point(p.High, p.Near);
            yield return p.Point(p.High, p.Far);
        }

        foreach (var floor in plan.Rooms.Select(r => r.Floor))
        {
            foreach (var ring in floor.InteriorRings.Append(floor.ExteriorRing))
            {
                var c = ring.Coordinates;
                double inside = Orientation.IsCCW(c) == ReferenceEquals(ring, floor.ExteriorRing) ? 1 : -1;
                for (int i = 0; i + 1 < c.Length; i++)
                {
                    var before = c[i == 0 ? c.Length - 2 : i - 1];
                    if (inside * Line.Offset(before, c[i], c[i + 1]) < 0)
                    {
                        yield return c[i];
                    }
                }
            }
        }
    }

    private static bool Clear(Coordinate a, Coordinate b, List<List<Coordinate>> things, IList<WallPiece> walls)
    {
        Steps.Beside(1 + things.Count + walls.Count);
        return !things.Any(t => Through(t, a, b, Graze)) && !walls.Any(w => Crosses(a, b, w.A, w.B));
    }

    /// <summary>Whether a to b runs inside a convex ring for more than a graze.</summary>
    private static bool Through(List<Coordinate> ring, Coordinate a, Coordinate b, double graze)
    {
        if (ring.Count < 3)
        {
            return false;
        }

        double enter = 0, leave = 1;
        for (int i = 0; i < ring.Count && enter <= leave; i++)
        {
            double atA = Line.Offset(ring[i], ring[(i + 1) % ring.Count], a) - graze;
            double atB = Line.Offset(ring[i], ring[(i + 1) % ring.Count], b) - graze;
            if (atA < 0 && atB < 0)
            {
                return false;
            }

            if (atA < 0)
            {
                enter = Math.Max(enter, atA / (atA - atB));
            }
            else if (atB < 0)
            {
                leave = Math.Min(leave, atA / (atA - atB));
            }
        }

        return enter <= leave;
    }

    private static bool Crosses(Coordinate a, Coordinate b, Coordinate c, Coordinate d)
    {
        double atA = Line.Offset(c, d, a), atB = Line.Offset(c, d, b), atC = Line.Offset(a, b, c), atD = Line.Offset(a, b, d);

        // Strict across the wall, wide along it: nothing slips through where two pieces of wall meet.
        bool across = (atA > Graze && atB < -Graze) || (atA < -Graze && atB > Graze);
        return across && Math.Max(atC, atD) >= -Graze && Math.Min(atC, atD) <= Graze;
    }
}
