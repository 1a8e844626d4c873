using Floorplan.Language.Quantities;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Shapes;

/// <summary>A place in plan coordinates: x east, y north, from the inside finished south-west corner of the shell.</summary>
public readonly record struct PlanPoint(Length X, Length Y)
{
    public Coordinate Coordinate => new(X.Millimetres, Y.Millimetres);

    public static PlanPoint operator +(PlanPoint a, PlanPoint b) => new(a.X + b.X, a.Y + b.Y);

    public static PlanPoint operator -(PlanPoint a, PlanPoint b) => new(a.X - b.X, a.Y - b.Y);
}
