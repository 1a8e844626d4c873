using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Free;

/// <summary>
/// Widens a convex thing by half a mover. Straight sides move out exactly; a corner gets straight pieces that touch the
/// true circle, each turning at most 45 degrees, so that a square corner is cut once. So a mover never passes where it does
/// not fit, and loses at most 8 % of its half width (1 / cos 22.5 degrees) beside a corner.
/// </summary>
internal static class ConvexRing
{
    private const double LargestTurn = Math.PI / 4;

    /// <summary>Corners of the convex outline, anticlockwise, without a repeated end: two for a line, one for a point.</summary>
    public static List<Coordinate> Of(Geometry shape)
    {
        var corners = shape.ConvexHull().Coordinates;
        var ring = new List<Coordinate>(corners.Length);
        foreach (var c in corners)
        {
            if (double.IsFinite(c.X) && double.IsFinite(c.Y) && (ring.Count == 0 || (!c.Equals2D(ring[^1]) && !c.Equals2D(ring[0]))))
            {
                ring.Add(c);
            }
        }

        if (ring.Count > 2 && NetTopologySuite.Algorithm.Area.OfRingSigned(corners) > 0)
        {
            ring.Reverse();
        }

        return ring;
    }

    public static List<GridPoint> Widen(IReadOnlyList<Coordinate> ring, double by, double scale)
    {
        var wide = new List<GridPoint>(ring.Count * 3);
        for (int i = 0; i < ring.Count; i++)
        {
            var p = ring[i];
            double from = Heading(ring[(i + ring.Count - 1) % ring.Count], p);
            double turn = Math.IEEERemainder(Heading(p, ring[(i + 1) % ring.Count]) - from, 2 * Math.PI);
            if (ring.Count == 1)
            {
                (from, turn) = (0, 2 * Math.PI);
            }
            else if (turn <= 0)
            {
                // Only the two ends of a line turn right round; rounding may give half a turn either sign.
                turn = ring.Count == 2 ? Math.PI : 0;
            }

            int pieces = Math.Max(1, (int)Math.Ceiling((turn / LargestTurn) - 1e-9));
            double step = turn / pieces, out_ = by / Math.Cos(step / 2);
            for (int k = 0; k < pieces; k++)
            {
                double angle = from - (Math.PI / 2) + (step * (k + 0.5));
                var q = GridPoint.Round(new Coordinate(p.X + (Math.Cos(angle) * out_), p.Y + (Math.Sin(angle) * out_)), scale);
                if (wide.Count == 0 || (wide[^1] != q && wide[0] != q))
                {
                    wide.Add(q);
                }
            }
        }

        return wide;
    }

    private static double Heading(Coordinate a, Coordinate b) => Math.Atan2(b.Y - a.Y, b.X - a.X);
}
