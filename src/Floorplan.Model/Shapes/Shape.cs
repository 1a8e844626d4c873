using NetTopologySuite;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Implementation;

namespace Floorplan.Model.Shapes;

/// <summary>
/// The one geometry factory: millimetres in double precision, with the overlay that snaps rather than fails where edges nearly meet.
/// </summary>
public static class Shape
{
    public static GeometryFactory Factory { get; } = new NtsGeometryServices(
        CoordinateArraySequenceFactory.Instance, PrecisionModel.Floating.Value, 0, GeometryOverlay.NG, new CoordinateEqualityComparer())
            .CreateGeometryFactory();
}
