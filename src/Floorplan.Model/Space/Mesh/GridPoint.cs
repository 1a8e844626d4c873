using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Mesh;

/// <summary>
/// A point on the working grid. Whole numbers make every left-or-right test exact: at 0.01 mm a plan of 1 km is 1e8
/// steps, and the products of the test stay far below the limit of a 64-bit number.
/// </summary>
internal readonly record struct GridPoint(long X, long Y) : IComparable<GridPoint>
{
    public static GridPoint Round(Coordinate c, double scale) => new((long)Math.Round(c.X * scale), (long)Math.Round(c.Y * scale));

    /// <summary>Twice the area of a, b, c: more than zero when c lies to the left of a towards b.</summary>
    public static long Turn(GridPoint a, GridPoint b, GridPoint c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));

    /// <summary>West to east, then south to north: the order of the sweep, which has no ties for upright edges.</summary>
    public int CompareTo(GridPoint other) => X != other.X ? X.CompareTo(other.X) : Y.CompareTo(other.Y);
}
