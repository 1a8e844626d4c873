using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space;

/// <summary>When two things are in each other's way rather than side by side.</summary>
public static class Touch
{
    /// <summary>Setting out on steel and panels is no finer than this; less is touching. Own assumption.</summary>
    public const double ToleranceMm = 1;

    /// <summary>The floor that both cover when it is more than touching, else null.</summary>
    public static Geometry? Shared(Geometry a, Geometry b)
    {
        // A strip is no broader than the box round it, and what stands flush shares a box without breadth.
        var box = a.EnvelopeInternal.Intersection(b.EnvelopeInternal);
        if (Math.Min(box.Width, box.Height) <= ToleranceMm)
        {
            return null;
        }

        Steps.Take(Steps.Overlay);
        var shared = Overlays.Common(a, b);
        return IsMoreThanTouching(shared) ? shared : null;
    }

    /// <summary>What of <paramref name="a"/> lies beyond <paramref name="b"/> when it is more than touching, else null.</summary>
    public static Geometry? Beyond(Geometry a, Geometry b)
    {
        if (b.Covers(a))
        {
            return null;
        }

        var beyond = Overlays.Less(a, b);
        return IsMoreThanTouching(beyond) ? beyond : null;
    }

    /// <summary>Whether a thing takes up any height between two levels above the finished floor, in mm.</summary>
    public static bool IsBetween(Station station, double bottomMm, double topMm)
        => Math.Min(station.Top.Millimetres, topMm) - Math.Max(station.Bottom.Millimetres, bottomMm) > ToleranceMm;

    // For a strip, twice the area over the outline is its breadth.
    private static bool IsMoreThanTouching(Geometry shape) => shape.Area > 0 && 2 * shape.Area / shape.Length > ToleranceMm;
}
