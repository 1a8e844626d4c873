using Floorplan.Model.Space.Mesh;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Gaps;

/// <summary>
/// Some tried points on a straight piece of a route, with what stands beside them. A gap is at least as wide as the
/// distances of its two things from the point are together at a right angle, and these change by no more than the way
/// walked: so most points are passed over without measuring.
/// </summary>
internal sealed class GapStretch
{
    /// <summary>Distance between tried points, in mm. Own assumption.</summary>
    public const double Spacing = 50;

    /// <summary>A thing is beside the route, not ahead, when it lies at more than 30 degrees from the way ahead. Own assumption.</summary>
    private const double Beside = 0.5;

    /// <summary>
    /// Two things make a gap when they lie on opposite sides, at least 120 degrees apart; at less they make an inner corner. Own
    /// assumption.
    /// </summary>
    private const double Opposite = -0.5;

    private readonly Coordinate from;
    private readonly Coordinate to;
    private readonly int count;
    private readonly int first;
    private readonly int last;
    private readonly double upTo;
    private readonly double spacing;
    private readonly Coordinate ahead;
    private readonly List<(IReadOnlyList<Coordinate> Ring, Station? Of)> left = [];
    private readonly List<(IReadOnlyList<Coordinate> Ring, Station? Of)> right = [];

    /// <param name="count">Number of steps that the piece is cut into; tried are the points <paramref name="first"/> to
    /// <paramref name="last"/>.</param>
    /// <param name="upTo">Gaps wider than this, in mm, are not looked for.</param>
    public GapStretch(Coordinate from, Coordinate to, int count, int first, int last, double upTo)
    {
        (this.from, this.to, this.count, this.first, this.last, this.upTo) = (from, to, count, first, last, upTo);
        double length = from.Distance(to);
        spacing = length / count;
        ahead = new Coordinate((to.X - from.X) / length, (to.Y - from.Y) / length);
        Box = new Envelope(At(first), At(last));
        Box.ExpandBy(upTo);
    }

    /// <summary>Nothing outside it counts.</summary>
    public Envelope Box { get; }

    /// <summary>Takes a thing on the sides of the route that it stands on; one that is too far off is left out.</summary>
    /// <param name="ring">Corners of a convex thing, or the two ends of a piece of wall.</param>
    public void Add(IReadOnlyList<Coordinate> ring, Station? of)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity, back = double.PositiveInfinity,
            front = double.NegativeInfinity;
        foreach (var corner in ring)
        {
            double dx = corner.X - from.X, dy = corner.Y - from.Y;
            double across = (ahead.X * dy) - (ahead.Y * dx), along = (ahead.X * dx) + (ahead.Y * dy);
            (low, high) = (Math.Min(low, across), Math.Max(high, across));
            (back, front) = (Math.Min(back, along), Math.Max(front, along));
        }

        if (back > (last * spacing) + upTo || front < (first * spacing) - upTo)
        {
            return;
        }

        if (high > 0 && low <= upTo)
        {
            left.Add((ring, of));
        }

        if (low < 0 && high >= -upTo)
        {
            right.Add((ring, of));
        }
    }

    /// <param name="best">What is known of the route so far.</param>
    /// <param name="isDoorway">Whether a join is the width of a door.</param>
    public Gap Narrowest(Gap best, Func<Coordinate, Coordinate, bool> isDoorway)
    {
        if (left.Count == 0 || right.Count == 0)
        {
            return best;
        }

        var onLeft = new List<(Coordinate At, double Distance, Station? Of)>();
        var onRight = new List<(Coordinate At, double Distance, Station? Of)>();
        for (int k = first; k <= last;)
        {
            var p = At(k);
            Steps.Beside(left.Count + right.Count);
            double nearLeft = Look(p, left, onLeft, 1), nearRight = Look(p, right, onRight, -1);
            foreach (var l in onLeft)
            {
                foreach (var r in onRight)
                {
                    double width = l.At.Distance(r.At);
                    double turn = ((l.At.X - p.X) * (r.At.X - p.X)) + ((l.At.Y - p.Y) * (r.At.Y - p.Y));
                    bool opposed = turn <= Opposite * l.Distance * r.Distance;
                    if (opposed && width < best.Width && width <= upTo && !isDoorway(l.At, r.At))
                    {
                        best = new Gap(width, Line.At(l.At, r.At, 0.5), l.Of, r.Of);
                    }
                }
            }

            k += 1 + (int)(Idle(nearLeft, nearRight, Math.Min(upTo, best.Width)) / spacing);
        }

        return best;
    }

    /// <summary>
    /// How far one can walk on before the two nearest things, at a right angle, could be nearer together than a width; a little less.
    /// </summary>
    private static double Idle(double left, double right, double width)
    {
        // After s mm they are at least left - s and right - s away, and not less than nothing.
        const double margin = 1e-3;
        double apart = left - right, square = width * width;
        double idle = apart * apart >= square
            ? Math.Max(left, right) - width
            : (left + right - Math.Sqrt((2 * square) - (apart * apart))) / 2;
        return Math.Max(0, idle - margin);
    }

    /// <summary>
    /// The nearest points of things on one side; gives the distance of the nearest thing, whether it lies beside or ahead.
    /// </summary>
    private double Look(
        Coordinate p, List<(IReadOnlyList<Coordinate> Ring, Station? Of)> things, List<(Coordinate At, double Distance, Station? Of)> found,
        int side)
    {
        found.Clear();
        double nearest = double.PositiveInfinity;
        foreach (var (ring, of) in things)
        {
            var q = NearestOn(ring, p);
            double dx = q.X - p.X, dy = q.Y - p.Y, distance = Math.Sqrt((dx * dx) + (dy * dy));
            double across = side * ((ahead.X * dy) - (ahead.Y * dx));
            nearest = Math.Min(nearest, distance);
            if (distance > FloorMesh.Same && distance <= upTo && across > 0 && across >= Beside * distance)
            {
                found.Add((q, distance, of));
            }
        }

        return nearest;
    }

    private Coordinate At(int k) => Line.At(from, to, k / (double)count);

    private static Coordinate NearestOn(IReadOnlyList<Coordinate> ring, Coordinate p)
    {
        var best = ring[0];
        double least = double.PositiveInfinity;
        int edges = ring.Count == 2 ? 1 : ring.Count;
        for (int i = 0; i < edges; i++)
        {
            var q = Line.Nearest(ring[i], ring[i + 1 == ring.Count ? 0 : i + 1], p);
            double distance = q.Distance(p);
            if (distance < least)
            {
                (best, least) = (q, distance);
            }
        }

        return best;
    }
}
