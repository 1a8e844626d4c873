using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>The service points of one kind, by room and by place, so that many stations find theirs fast.</summary>
internal sealed class NearestPoint<T>
    where T : ServicePoint
{
    private readonly Dictionary<string, STRtree<Geometry>> byRoom = [];

    public NearestPoint(Plan plan, Func<T, bool>? serves = null)
    {
        foreach (var point in plan.Services.OfType<T>())
        {
            if (point.Room is { } room && serves?.Invoke(point) != false)
            {
                if (!byRoom.TryGetValue(room.Id, out var tree))
                {
                    byRoom[room.Id] = tree = new STRtree<Geometry>();
                }

                var at = Shape.Factory.CreatePoint(point.At.Coordinate);
                at.UserData = point;
                tree.Insert(at.EnvelopeInternal, at);
            }
        }
    }

    /// <summary>Whether a room has such a point at all.</summary>
    public bool IsIn(Room room) => byRoom.ContainsKey(room.Id);

    /// <summary>Straight distance on plan from the station's edge in mm; null when its room has no such point.</summary>
    public (T Point, double Mm)? To(Station station)
    {
        if (!byRoom.TryGetValue(station.Room.Id, out var tree))
        {
            return null;
        }

        var nearest = tree.NearestNeighbour(station.Footprint.EnvelopeInternal, station.Footprint, new GeometryItemDistance());
        return ((T)nearest.UserData, station.Footprint.Distance(nearest));
    }
}
