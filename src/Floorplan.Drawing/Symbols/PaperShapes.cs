using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Symbols;

/// <summary>Small pieces of plane geometry on paper.</summary>
public static class PaperShapes
{
    private const int Sides = 24;

    /// <summary>Half axes <paramref name="a"/> along the direction, <paramref name="b"/> across it.</summary>
    /// <param name="degrees">Counter-clockwise on paper from the x axis.</param>
    public static IReadOnlyList<PaperPoint> Ellipse(PaperPoint centre, double a, double b, double degrees)
    {
        var along = Direction(degrees);
        var across = Left(along);
        return [.. Enumerable.Range(0, Sides).Select(i =>
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / Sides);
            return centre + Times(along, a * cos) + Times(across, b * sin);
        })];
    }

    /// <summary>Unit vector at an angle counter-clockwise on paper (whose y points down).</summary>
    public static PaperPoint Direction(double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return new PaperPoint(cos, -sin);
    }

    /// <summary>The angle of a vector, counter-clockwise on paper, 0 up to 360.</summary>
    public static double Degrees(PaperPoint vector)
    {
        double degrees = Math.Atan2(-vector.Y, vector.X) * 180 / Math.PI;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    /// <summary>A quarter turn counter-clockwise as seen on paper.</summary>
    public static PaperPoint Left(PaperPoint vector) => new(vector.Y, -vector.X);

    public static PaperPoint Times(PaperPoint vector, double by) => new(vector.X * by, vector.Y * by);

    public static double Length(PaperPoint vector) => Math.Sqrt((vector.X * vector.X) + (vector.Y * vector.Y));

    /// <summary>Unit vector from one point to another; along x when they are the same.</summary>
    public static PaperPoint Towards(PaperPoint from, PaperPoint to)
    {
        var vector = to - from;
        double length = Length(vector);
        return length == 0 ? new PaperPoint(1, 0) : Times(vector, 1 / length);
    }

    public static PaperPoint Between(PaperPoint a, PaperPoint b, double share) => a + Times(b - a, share);
}
