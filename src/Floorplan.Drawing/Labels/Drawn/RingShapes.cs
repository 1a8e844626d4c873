using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels.Drawn;

/// <summary>What rings (even-odd) have in common with points, boxes and lines.</summary>
internal static class RingShapes
{
    public static bool Holds(IReadOnlyList<IReadOnlyList<PaperPoint>> rings, PaperPoint p)
    {
        bool inside = false;
        foreach (var ring in rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
                inside ^= (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X + ((p.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X));
            }
        }

        return inside;
    }

    public static bool Touches(IReadOnlyList<IReadOnlyList<PaperPoint>> rings, PaperBox box)
    {
        foreach (var ring in rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                if (box.IsCutBy(ring[i], ring[(i + 1) % ring.Count]))
                {
                    return true;
                }
            }
        }

        return Holds(rings, box.Centre);
    }

    /// <summary>True when a straight line has a stretch inside.</summary>
    public static bool AreCutBy(IReadOnlyList<IReadOnlyList<PaperPoint>> rings, PaperPoint from, PaperPoint to)
    {
        var line = new DrawnLine(from, to, 0);
        foreach (var ring in rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                if (line.Crosses(ring[i], ring[(i + 1) % ring.Count]))
                {
                    return true;
                }
            }
        }

        return Holds(rings, new((from.X + to.X) / 2, (from.Y + to.Y) / 2));
    }

    /// <summary>From a point to the nearest edge.</summary>
    public static double Distance(IReadOnlyList<IReadOnlyList<PaperPoint>> rings, PaperPoint p)
    {
        double nearest = double.PositiveInfinity;
        foreach (var ring in rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                nearest = Math.Min(nearest, Distance(ring[i], ring[(i + 1) % ring.Count], p));
            }
        }

        return nearest;
    }

    private static double Distance(PaperPoint a, PaperPoint b, PaperPoint p)
    {
        var (x, y) = (b.X - a.X, b.Y - a.Y);
        double length = (x * x) + (y * y);
        double share = length == 0 ? 0 : Math.Clamp((((p.X - a.X) * x) + ((p.Y - a.Y) * y)) / length, 0, 1);
        return Math.Sqrt(Math.Pow(a.X + (share * x) - p.X, 2) + Math.Pow(a.Y + (share * y) - p.Y, 2));
    }
}
