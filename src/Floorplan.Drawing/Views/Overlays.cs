using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace Floorplan.Drawing.Views;

/// <summary>Polygon sums and differences that hold for any plan.</summary>
internal static class Overlays
{
    public static Geometry Less(Geometry from, Geometry what) =>
        from.IsEmpty || what.IsEmpty ? from : OverlayNGRobust.Overlay(from, what, SpatialFunction.Difference);

    public static Geometry Common(Geometry a, Geometry b) => OverlayNGRobust.Overlay(a, b, SpatialFunction.Intersection);

    public static Geometry Sum(IEnumerable<Geometry> parts)
    {
        Geometry[] all = [.. parts.Where(p => !p.IsEmpty)];
        return all.Length == 0 ? Shape.Factory.CreatePolygon() : OverlayNGRobust.Union(all);
    }
}
