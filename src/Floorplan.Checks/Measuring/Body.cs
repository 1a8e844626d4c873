using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Measuring;

/// <summary>One standing place with its own two axes: away from the bench, and along it.</summary>
internal sealed class Body
{
    /// <summary>
    /// Shoulder breadth and belly depth of a 95th-percentile man in mm: what no squeezing makes smaller. Whoever works in a unit may
    /// change; who comes to mend and to inspect may be anybody, so that these stay whatever people the plan is for.
    /// </summary>
    public static double Shoulders { get; } = BodySize.Largest(BodyMeasure.Shoulders).Usual;

    /// <inheritdoc cref="Shoulders"/>
    public static double Belly { get; } = BodySize.Largest(BodyMeasure.Belly).Usual;

    private readonly Coordinate front;
    private readonly (double X, double Y) away;

    public Body(Station station, WorkerPlace worker)
    {
        Floor = worker.Floor;
        var corners = Floor.ExteriorRing.Coordinates;

        // The edge of the place that lies at the station is the bench edge.
        front = Enumerable.Range(0, corners.Length - 1)
            .Select(i => new Coordinate((corners[i].X + corners[i + 1].X) / 2, (corners[i].Y + corners[i + 1].Y) / 2))
            .MinBy(middle => station.Footprint.Distance(Shape.Factory.CreatePoint(middle)))!;
        var centre = worker.Centre.Coordinate;
        double length = Math.Max(centre.Distance(front), 1e-9);
        away = ((centre.X - front.X) / length, (centre.Y - front.Y) / length);
    }

    public Polygon Floor { get; }

    /// <summary>The least floor that the body itself needs, at the bench edge.</summary>
    public Polygon Least => Shape.Factory.CreatePolygon(
    [
        At(0, -Shoulders / 2), At(Belly, -Shoulders / 2), At(Belly, Shoulders / 2), At(0, Shoulders / 2), At(0, -Shoulders / 2),
    ]);

    /// <summary>How far a blocked part cuts into the place, in mm: from behind and from the nearer side.</summary>
    public (double FromBehind, double FromSide) Cut(Geometry blocked)
    {
        double depth = 0;
        double left = double.MaxValue;
        double right = double.MinValue;
        double nearest = double.MaxValue;
        foreach (var c in Floor.Coordinates)
        {
            depth = Math.Max(depth, Along(c).Away);
        }

        double half = Floor.Coordinates.Max(c => Math.Abs(Along(c).Side));
        foreach (var c in blocked.Coordinates)
        {
            var (a, s) = Along(c);
            nearest = Math.Min(nearest, a);
            left = Math.Min(left, s);
            right = Math.Max(right, s);
        }

        return (depth - nearest, Math.Min(right + half, half - left));
    }

    /// <summary>The compass word for the way back from the bench.</summary>
    public string Backwards => Say.Heading(away.X, away.Y);

    private Coordinate At(double back, double side)
        => new(front.X + (back * away.X) - (side * away.Y), front.Y + (back * away.Y) + (side * away.X));

    private (double Away, double Side) Along(Coordinate c)
    {
        double dx = c.X - front.X;
        double dy = c.Y - front.Y;
        return ((dx * away.X) + (dy * away.Y), (dy * away.X) - (dx * away.Y));
    }
}
