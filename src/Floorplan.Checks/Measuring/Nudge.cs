using Floorplan.Language.Quantities;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace Floorplan.Checks.Measuring;

/// <summary>How far to move one thing along one compass direction so that it comes near enough to another.</summary>
internal static class Nudge
{
    /// <summary>
    /// A step east, west, north or south, in words, after which the straight distance from <paramref name="from"/> to
    /// <paramref name="to"/> is at most <paramref name="within"/>; along the axis on which they lie farther apart.
    /// </summary>
    public static string Toward(Coordinate from, Geometry to, double within, UnitSystem units)
    {
        var near = DistanceOp.NearestPoints(Floorplan.Model.Shapes.Shape.Factory.CreatePoint(from), to)[1];
        double dx = near.X - from.X;
        double dy = near.Y - from.Y;
        (double along, double across) = Math.Abs(dx) >= Math.Abs(dy) ? (dx, dy) : (dy, dx);
        double step = Math.Abs(across) <= within
            ? Math.Abs(along) - Math.Sqrt((within * within) - (across * across))
            : Math.Abs(along);
        return $"{Say.SizeUp(Math.Max(step, 1), units)} {Say.Heading(dx, dy)}";
    }
}
