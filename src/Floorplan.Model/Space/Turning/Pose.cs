using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Turning;

/// <summary>Where a rectangle lies on plan.</summary>
/// <param name="X">Of its middle, in plan mm.</param>
/// <param name="Angle">Of its long side from east, anticlockwise, in radians from 0 to pi.</param>
public readonly record struct Pose(double X, double Y, double Angle)
{
    /// <summary>With east and north changed over.</summary>
    internal Pose Crossed => new(Y, X, Cross(Angle));

    internal static double Cross(double angle) => ((((Math.PI / 2) - angle) % Math.PI) + Math.PI) % Math.PI;

    public Polygon Outline(LongBox box)
    {
        var (sin, cos) = Math.SinCos(Angle);
        double lx = cos * box.Length / 2, ly = sin * box.Length / 2, wx = -sin * box.Width / 2, wy = cos * box.Width / 2;
        return Shape.Factory.CreatePolygon(
        [
            new(X + lx + wx, Y + ly + wy), new(X - lx + wx, Y - ly + wy), new(X - lx - wx, Y - ly - wy), new(X + lx - wx, Y + ly - wy),
            new(X + lx + wx, Y + ly + wy),
        ]);
    }
}

/// <summary>A rigid rectangle that is moved, in mm.</summary>
public readonly record struct LongBox
{
    public LongBox(double side, double other)
    {
        Length = Math.Max(side, other);
        Width = Math.Min(side, other);
    }

    public double Length { get; }

    public double Width { get; }

    public double Diagonal => Math.Sqrt((Length * Length) + (Width * Width));

    /// <summary>Larger on every side, or smaller with a number below 0, and never less than 1 mm.</summary>
    public LongBox Grown(double by) => new(Math.Max(1, Length + (2 * by)), Math.Max(1, Width + (2 * by)));
}

/// <summary>A place that the middle of a rectangle starts from or should come to.</summary>
/// <param name="Radius">As near as this will do, in mm.</param>
/// <param name="Angle">The one angle that it starts at, or null for any; a goal takes any.</param>
public readonly record struct Spot(Coordinate At, double Radius, double? Angle = null)
{
    internal Spot Crossed => new(new Coordinate(At.Y, At.X), Radius, Angle is { } angle ? Pose.Cross(angle) : null);
}
