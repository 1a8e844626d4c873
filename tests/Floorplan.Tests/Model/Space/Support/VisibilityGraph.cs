using NetTopologySuite.Geometries;

namespace Floorplan.Tests.Model.Space.Support;

/// <summary>
/// An independent solver: joins every two corners of a floor that see each other and takes the shortest chain. Sees means
/// that every stretch between two meetings with the rim lies on the floor. Slow and plain on purpose; shares no code with the product.
/// </summary>
internal sealed class VisibilityGraph
{
    private const double Tolerance = 1e-3;
    private readonly List<(Coordinate A, Coordinate B)> rim = [];
    private readonly List<Coordinate> corners = [];

    public VisibilityGraph(Geometry floor)
    {
        for (int g = 0; g < floor.NumGeometries; g++)
        {
            var polygon = (Polygon)floor.GetGeometryN(g);
            foreach (var ring in polygon.InteriorRings.Prepend(polygon.ExteriorRing))
            {
                var c = ring.Coordinates;
                for (int i = 0; i + 1 < c.Length; i++)
                {
                    rim.Add((c[i], c[i + 1]));
                    corners.Add(c[i]);
                }
            }
        }

    }

    public double Shortest(Coordinate from, Coordinate to)
    {
        if (Sees(from, to))
        {
            return from.Distance(to);
        }

        var distance = corners.Select(c => Sees(from, c) ? from.Distance(c) : double.PositiveInfinity).ToArray();
        var done = new bool[corners.Count];
        double best = double.PositiveInfinity;
        while (true)
        {
            int next = -1;
            for (int i = 0; i < corners.Count; i++)
            {
                if (!done[i] && double.IsFinite(distance[i]) && (next < 0 || distance[i] < distance[next]))
                {
                    next = i;
                }
            }

            if (next < 0 || distance[next] >= best)
            {
                return best;
            }

            done[next] = true;
            if (distance[next] + corners[next].Distance(to) < best && Sees(corners[next], to))
            {
                best = distance[next] + corners[next].Distance(to);
            }

            for (int j = 0; j < corners.Count; j++)
            {
                double length = distance[next] + corners[next].Distance(corners[j]);
                if (!done[j] && length < distance[j] && length + corners[j].Distance(to) < best && Sees(corners[next], corners[j]))
                {
                    distance[j] = length;
                }
            }
        }
    }

    public bool Sees(Coordinate p, Coordinate q)
    {
        double length = p.Distance(q);
        if (length <= Tolerance)
        {
            return true;
        }

        var cuts = new List<double> { 0, 1 };
        foreach (var (a, b) in rim)
        {
            double atA = Off(p, q, a), atB = Off(p, q, b);
            if (Math.Abs(atA) <= Tolerance)
            {
                cuts.Add(Part(p, q, a));
            }

            if (Math.Abs(atB) <= Tolerance)
            {
                cuts.Add(Part(p, q, b));
            }

            if ((atA > Tolerance && atB < -Tolerance) || (atA < -Tolerance && atB > Tolerance))
            {
                double part = atA / (atA - atB), atP = Off(a, b, p), atQ = Off(a, b, q);
                if ((atP > Tolerance && atQ < -Tolerance) || (atP < -Tolerance && atQ > Tolerance))
                {
                    return false;
                }

                cuts.Add(Part(p, q, new Coordinate(a.X + ((b.X - a.X) * part), a.Y + ((b.Y - a.Y) * part))));
            }
        }

        cuts.Sort();
        for (int i = 0; i + 1 < cuts.Count; i++)
        {
            double from = Math.Max(0, cuts[i]), to = Math.Min(1, cuts[i + 1]);
            if ((to - from) * length > 4 * Tolerance)
            {
                double middle = (from + to) / 2;
                if (!OnFloor(new Coordinate(p.X + ((q.X - p.X) * middle), p.Y + ((q.Y - p.Y) * middle))))
                {
                    return false;
                }
            }
        }

        return true;
    }

    private bool OnFloor(Coordinate p)
    {
        bool inside = false;
        foreach (var (a, b) in rim)
        {
            double part = Math.Clamp(Part(a, b, p), 0, 1);
            if (new Coordinate(a.X + ((b.X - a.X) * part), a.Y + ((b.Y - a.Y) * part)).Distance(p) <= Tolerance)
            {
                return true;
            }

            if ((a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X + ((p.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private static double Off(Coordinate a, Coordinate b, Coordinate p) =>
        (((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X))) / a.Distance(b);

    private static double Part(Coordinate a, Coordinate b, Coordinate p) =>
        (((p.X - a.X) * (b.X - a.X)) + ((p.Y - a.Y) * (b.Y - a.Y))) / ((b.X - a.X) * (b.X - a.X) + ((b.Y - a.Y) * (b.Y - a.Y)));
}
