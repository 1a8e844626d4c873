using Floorplan.Model.Space;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace Floorplan.Model.Shapes;

/// <summary>
/// Sums, differences and common parts that hold for any plan. Two floors that overlap in one place and touch along an edge in another
/// have a polygon and a line in common; only the floor counts here. A test keeps the library's own operations out of all other code.
/// </summary>
public static class Overlays
{
    /// <summary>The floor of <paramref name="from"/> without that of <paramref name="what"/>. Polygons only; may be empty.</summary>
    public static Geometry Less(Geometry from, Geometry what) =>
        from.IsEmpty || what.IsEmpty ? from : Polygons(Overlay(from, what, SpatialFunction.Difference));

    /// <summary>The floor that both cover. Polygons only; may be empty.</summary>
    public static Geometry Common(Geometry a, Geometry b) => Polygons(Overlay(a, b, SpatialFunction.Intersection));

    /// <summary>The floor that one of them covers and the other does not. Polygons only; may be empty.</summary>
    public static Geometry InOneOnly(Geometry a, Geometry b) =>
        Polygons(Overlay(a, b, SpatialFunction.SymDifference));

    /// <summary>Floor that at least one of them covers.</summary>
    public static Geometry Sum(IEnumerable<Geometry> parts)
    {
        Geometry[] all = [.. parts.Where(p => !p.IsEmpty)];
        Steps.BesideOverlay(all.Sum(p => p.NumPoints));
        return all.Length == 0 ? Shape.Factory.CreatePolygon() : OverlayNGRobust.Union(all);
    }

    /// <summary>The stretches of a line that run over a floor. Lines only, in no order; a corner that is just touched is none.</summary>
    public static Geometry Stretches(LineString line, Geometry floor) =>
        Overlay(line, floor, SpatialFunction.Intersection) switch
        {
            ILineal shape => (Geometry)shape,
            GeometryCollection parts => Shape.Factory.BuildGeometry([.. LineStringExtracter.GetLines(parts)]),
            _ => Shape.Factory.CreateLineString(),
        };

    /// <summary>A place that both have, whatever they are; null for none.</summary>
    public static Coordinate? Meeting(Geometry a, Geometry b) =>
        Overlay(a, b, SpatialFunction.Intersection) is { IsEmpty: false } common ? common.Coordinate : null;

    private static Geometry Overlay(Geometry a, Geometry b, SpatialFunction function)
    {
        Steps.BesideOverlay(a.NumPoints + b.NumPoints);
        return OverlayNGRobust.Overlay(a, b, function);
    }

    private static Geometry Polygons(Geometry shape) => shape switch
    {
        IPolygonal => shape,
        GeometryCollection parts => Shape.Factory.BuildGeometry([.. PolygonExtracter.GetPolygons(parts)]),
        _ => Shape.Factory.CreatePolygon(),
    };
}
