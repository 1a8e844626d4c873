using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Mesh;

/// <summary>Small sums on straight lines, in mm.</summary>
internal static class Line
{
    /// <summary>How far p lies to the left of the line a towards b (to the right: less than zero).</summary>
    public static double Offset(Coordinate a, Coordinate b, Coordinate p)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y, length = Math.Sqrt((dx * dx) + (dy * dy));
        return length == 0 ? 0 : ((dx * (p.Y - a.Y)) - (dy * (p.X - a.X))) / length;
    }

    /// <summary>How far along a towards b the foot of p lies: 0 at a, 1 at b.</summary>
    public static double Along(Coordinate a, Coordinate b, Coordinate p)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y, square = (dx * dx) + (dy * dy);
        return square == 0 ? 0 : (((p.X - a.X) * dx) + ((p.Y - a.Y) * dy)) / square;
    }

    public static Coordinate At(Coordinate a, Coordinate b, double part) => new(a.X + ((b.X - a.X) * part), a.Y + ((b.Y - a.Y) * part));

    /// <summary>The point of the piece a to b that is nearest to p; exactly an end when that is nearest.</summary>
    public static Coordinate Nearest(Coordinate a, Coordinate b, Coordinate p)
    {
        double part = Along(a, b, p);
        return part <= 0 ? a : part >= 1 ? b : At(a, b, part);
    }
}
