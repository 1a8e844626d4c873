using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space.Search;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace Floorplan.Model.Space.Legs;

/// <summary>Product that is passed on without a step: from one worker's hands to the next thing, in a straight line.</summary>
internal static class HandOver
{
    /// <summary>
    /// From the middle of a standing place to the thing, in mm: half the depth of a worker and an arm (677 mm, 5th-percentile woman,
    /// MIL-STD-1472G App. B), rounded up. Own assumption.
    /// </summary>
    private const double Reach = 1000;

    /// <summary>Things this near each other touch, in mm: a gap that product slides over. Own assumption.</summary>
    private const double Touch = 50;

    /// <summary>The straight hand-over, or null when somebody must walk.</summary>
    public static Route? Find(Leg leg, Maps maps)
    {
        var from = leg.From as StationStop;
        var to = leg.To as StationStop;
        if (from is null && to is null)
        {
            return null;
        }

        if (from is not null && to is not null)
        {
            return from.Station.Room.Id == to.Station.Room.Id && !ReferenceEquals(from.Station, to.Station)
                ? Between(from.Station, to.Station, maps)
                : null;
        }

        var station = (from ?? to!).Station;
        if ((from is null ? leg.From : leg.To) is not OpeningStop { Opening: var opening } || opening.IsPassage
            || maps.Of(opening) is not { } passage || !passage.LeadsTo(station.Room)
            || Hands(station, opening.Reveal, passage.Middle) is not { } hands)
        {
            return null;
        }

        var path = Routes.Path(from is null ? [passage.Middle, hands] : [hands, passage.Middle]);
        return IsOpen(path, maps, station) ? new Route(path, [station.Room], [opening]) : null;
    }

    private static Route? Between(Station a, Station b, Maps maps)
    {
        var first = Hands(a, b.Footprint, b.Footprint.Centroid.Coordinate);
        var second = Hands(b, a.Footprint, a.Footprint.Centroid.Coordinate);
        if (first is null && second is null)
        {
            return null;
        }

        var from = first ?? Nearest(a.Footprint, second!);
        var to = second ?? Nearest(b.Footprint, first!);
        var path = Routes.Path([from, to]);
        return a.Room.Floor.Covers(path) && IsOpen(path, maps, a, b) ? new Route(path, [(Room?)a.Room], []) : null;
    }

    /// <summary>Whether no other thing that is taller than the work stands between.</summary>
    private static bool IsOpen(LineString path, Maps maps, params Station[] between) =>
        !maps.Obstacles.Near(path.EnvelopeInternal).Any(o => o.Station.Top > between[0].WorkHeight && o.Blocks(Mover.Person.HeightMm)
            && !between.Any(s => s.Id == o.Station.Id) && o.Station.Footprint.Crosses(path));

    /// <summary>
    /// Where the hands at a station start: the nearest worker within reach of the other thing, or the station's middle when the two
    /// touch.
    /// </summary>
    private static Coordinate? Hands(Station station, Geometry other, Coordinate toward)
    {
        var worker = station.Workers.Select(w => w.Centre.Coordinate).MinBy(c => c.Distance(toward));
        if (worker is not null && other.Distance(other.Factory.CreatePoint(worker)) <= Reach)
        {
            return worker;
        }

        return station.Footprint.Distance(other) <= Touch ? worker ?? station.Footprint.Centroid.Coordinate : null;
    }

    private static Coordinate Nearest(Geometry shape, Coordinate to) => DistanceOp.NearestPoints(shape, shape.Factory.CreatePoint(to))[0];
}
