using Floorplan.Language.Quantities;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Shapes;

/// <summary>An upright rectangle in plan coordinates, exact.</summary>
public readonly record struct Box(Length West, Length South, Length East, Length North)
{
    public Length Width => East - West;

    public Length Depth => North - South;

    public PlanPoint Centre => new((West + East) / 2, (South + North) / 2);

    /// <summary>The same rectangle in millimetres, for geometry.</summary>
    public Polygon ToPolygon() => Shape.Factory.CreatePolygon(
    [
        new Coordinate(West.Millimetres, South.Millimetres),
        new Coordinate(East.Millimetres, South.Millimetres),
        new Coordinate(East.Millimetres, North.Millimetres),
        new Coordinate(West.Millimetres, North.Millimetres),
        new Coordinate(West.Millimetres, South.Millimetres),
    ]);
}
