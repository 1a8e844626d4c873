namespace Floorplan.Sizing.Simulation.Motion;

/// <summary>Gathers the points of a track.</summary>
internal sealed class TrackMaker
{
    private readonly List<MotionPoint> points = [];

    public MotionTrack Track => new(points);

    public (double X, double Y)? Last => points.Count > 0 ? (points[^1].X, points[^1].Y) : null;

    /// <summary>Stays where it is until then; nothing before the first place.</summary>
    public void StayUntil(long at)
    {
        if (Last is { } last)
        {
            Add(at, last);
        }
    }

    public void Add(long at, (double X, double Y)? place)
    {
        if (place is not var (x, y))
        {
            return;
        }

        // A third point at one place in a row only moves the second.
        if (points.Count > 1 && IsAt(points[^1], x, y) && IsAt(points[^2], x, y))
        {
            points[^1] = points[^1] with { At = at };
        }
        else if (points.Count == 0 || points[^1].At != at || !IsAt(points[^1], x, y))
        {
            points.Add(new MotionPoint(at, x, y));
        }
    }

    /// <summary>Evenly along a way.</summary>
    public void Along(IReadOnlyList<(double X, double Y)> way, long from, long until)
    {
        double length = 0;
        for (int i = 1; i < way.Count; i++)
        {
            length += Distance(way[i - 1], way[i]);
        }

        double gone = 0;
        for (int i = 0; i < way.Count; i++)
        {
            gone += i > 0 ? Distance(way[i - 1], way[i]) : 0;
            Add(length > 0 ? from + (long)((until - from) * gone / length) : until, way[i]);
        }

        Add(until, way[^1]);
    }

    private static bool IsAt(MotionPoint point, double x, double y) => point.X.Equals(x) && point.Y.Equals(y);

    private static double Distance((double X, double Y) a, (double X, double Y) b)
        => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));
}
