using NetTopologySuite.Geometries;

namespace Floorplan.Model.Shapes;

/// <summary>The one geometry factory: millimetres in double precision.</summary>
public static class Shape
{
    public static GeometryFactory Factory { get; } = NetTopologySuite.NtsGeometryServices.Instance.CreateGeometryFactory();
}
