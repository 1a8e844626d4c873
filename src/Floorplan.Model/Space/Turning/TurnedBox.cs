namespace Floorplan.Model.Space.Turning;

/// <summary>
/// A rectangle held at one angle. On a line from west to east, an edge keeps its middle out of one stretch, which is exact.
/// </summary>
internal sealed class TurnedBox
{
    /// <summary>Touching is not blocking, in mm.</summary>
    private const double Touch = 1e-6;

    private const double Flat = 1e-9;

    private readonly double halfLength;
    private readonly double halfWidth;
    private readonly double sin;
    private readonly double cos;

    /// <summary>Height of the corner that lies farthest east, from the middle.</summary>
    private readonly double eastCorner;

    public TurnedBox(LongBox box, double angle)
    {
        halfLength = box.Length / 2;
        halfWidth = box.Width / 2;
        (sin, cos) = Math.SinCos(angle);
        eastCorner = cos >= 0 ? (halfLength * sin) - (halfWidth * cos) : (-halfLength * sin) - (halfWidth * cos);
        HalfHeight = (halfLength * sin) + (halfWidth * Math.Abs(cos));
    }

    /// <summary>How far it reaches north and south of its middle.</summary>
    public double HalfHeight { get; }

    /// <summary>Where on the line at <paramref name="y"/> its middle cannot be because of an edge; false when it can be anywhere.</summary>
    public bool IsBlocked(in SolidEdge edge, double y, out double west, out double east)
    {
        west = east = 0;
        double reach = HalfHeight - Touch;
        double start = y - edge.AY, climb = edge.AY - edge.BY, run = edge.BX - edge.AX;
        double from = 0, to = 1;
        if (Math.Abs(climb) < Flat)
        {
            if (Math.Abs(start) >= reach)
            {
                return false;
            }
        }
        else
        {
            double one = (-reach - start) / climb, other = (reach - start) / climb;
            from = Math.Max(from, Math.Min(one, other));
            to = Math.Min(to, Math.Max(one, other));
            if (from >= to)
            {
                return false;
            }
        }

        // How far it reaches is a straight line between corners, so that the farthest is at an end or where a corner meets the line.
        east = Math.Max(East(from), East(to));
        west = Math.Min(West(from), West(to));
        if (Math.Abs(climb) >= Flat)
        {
            double atEast = (eastCorner - start) / climb, atWest = (-eastCorner - start) / climb;
            east = atEast > from && atEast < to ? Math.Max(east, East(atEast)) : east;
            west = atWest > from && atWest < to ? Math.Min(west, West(atWest)) : west;
        }

        double x = edge.AX;
        west += x + Touch;
        east += x - Touch;
        return west < east;

        double East(double t) => (t * run) + Half(start + (t * climb));
        double West(double t) => (t * run) - Half(-start - (t * climb));
    }

    /// <summary>How far it reaches east of its middle at a height.</summary>
    private double Half(double height)
    {
        double end = Math.Abs(cos) < Flat
            ? double.MaxValue
            : cos > 0
            ? (halfLength - (sin * height)) / cos
            : (-halfLength - (sin * height)) / cos;
        double side = sin < Flat ? double.MaxValue : (halfWidth + (cos * height)) / sin;
        return Math.Min(end, side);
    }
}
