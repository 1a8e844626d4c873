namespace Floorplan.Sizing.Simulation.Motion;

/// <summary>A place at a time, in ticks and plan millimetres.</summary>
public readonly record struct MotionPoint(long At, double X, double Y);

/// <summary>Where something is through the day: from each point it goes straight and evenly to the next.</summary>
/// <param name="Points">In the order of time; of two at one moment the later is where it goes on from.</param>
public sealed record MotionTrack(IReadOnlyList<MotionPoint> Points)
{
    /// <summary>Before the first point it is there, after the last one too.</summary>
    public (double X, double Y) At(long at)
    {
        int after = FirstAfter(at);
        if (after == 0)
        {
            return (Points[0].X, Points[0].Y);
        }

        var from = Points[after - 1];
        if (after == Points.Count)
        {
            return (from.X, from.Y);
        }

        var to = Points[after];
        double share = (at - from.At) / (double)(to.At - from.At);
        return (from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));
    }

    /// <summary>The stretch from one time to the other, with a point at both ends.</summary>
    public IReadOnlyList<MotionPoint> Between(long from, long to)
    {
        var (x, y) = At(from);
        var stretch = new List<MotionPoint> { new(from, x, y) };
        for (int i = FirstAfter(from); i < Points.Count && Points[i].At <= to; i++)
        {
            stretch.Add(Points[i]);
        }

        if (stretch[^1].At < to)
        {
            (x, y) = At(to);
            stretch.Add(new MotionPoint(to, x, y));
        }

        return stretch;
    }

    private int FirstAfter(long at)
    {
        int low = 0;
        int high = Points.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = Points[middle].At <= at ? (middle + 1, high) : (low, middle);
        }

        return low;
    }
}
