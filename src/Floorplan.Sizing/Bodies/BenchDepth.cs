using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace Floorplan.Sizing.Bodies;

/// <summary>How far over a station a worker's hands must go.</summary>
public static class BenchDepth
{
    /// <summary>
    /// Straight ahead of the worker, the far side of the station, or its middle where that is all that the hands need;
    /// null when the worker stands in the station.
    /// </summary>
    public static Point? FarthestWorked(Station station, WorkerPlace worker)
    {
        var centre = worker.Centre.Coordinate;
        var near = DistanceOp.NearestPoints(station.Footprint, Shape.Factory.CreatePoint(centre))[0];
        double gap = near.Distance(centre);
        if (gap < 1)
        {
            return null;
        }

        double span = station.Footprint.EnvelopeInternal.Diameter;
        double dx = (near.X - centre.X) / gap;
        double dy = (near.Y - centre.Y) / gap;
        var ahead = Shape.Factory.CreateLineString([near, new Coordinate(near.X + (dx * span), near.Y + (dy * span))]);
        double deep = Overlays.Stretches(ahead, station.Footprint).Coordinates.Select(c => c.Distance(near)).DefaultIfEmpty(0).Max();
        double worked = IsWorkedToTheMiddle(station, worker) ? deep / 2 : deep;
        return Shape.Factory.CreatePoint(new Coordinate(near.X + (dx * worked), near.Y + (dy * worked)));
    }

    /// <summary>
    /// Round things, tanks that hold product, and benches with people on the other side too are worked no farther than
    /// their middle; own assumption.
    /// </summary>
    public static bool IsWorkedToTheMiddle(Station station, WorkerPlace worker) =>
        station.Diameter is not null || station.Stays is not null || station.Holds is not null || station.Batch is not null ||
        station.Workers.Any(w => w.Stands == worker.Stands.Opposite());
}
