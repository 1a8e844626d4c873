using Floorplan.Model.Rooms;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Sizing.Water;

/// <summary>Service points that give one thing, by room and by place, so that many stations find theirs fast.</summary>
internal sealed class PointIndex
{
    /// <summary>Points that are no farther than the nearest by more than this are equally near, in mm; own assumption.</summary>
    private const double EquallyNear = 0.5;

    private readonly Dictionary<string, STRtree<Geometry>> byRoom = new(StringComparer.Ordinal);
    private readonly STRtree<Geometry> all = new();

    /// <param name="points">In order of the file; those in no room serve nothing.</param>
    public PointIndex(IEnumerable<ServicePoint> points)
    {
        foreach (var (order, point) in points.Where(p => p.Room is not null).Index())
        {
            if (!byRoom.TryGetValue(point.Room!.Id, out var tree))
            {
                byRoom[point.Room.Id] = tree = new STRtree<Geometry>();
            }

            var at = Shape.Factory.CreatePoint(point.At.Coordinate);
            at.UserData = (order, point);
            tree.Insert(at.EnvelopeInternal, at);
            all.Insert(at.EnvelopeInternal, at);
        }
    }

    public IEnumerable<ServicePoint> NearestIn(Room room, Station station, Func<ServicePoint, bool> rather) =>
        byRoom.TryGetValue(room.Id, out var tree) ? Nearest(tree, station, rather) : [];

    public IEnumerable<ServicePoint> NearestAnywhere(Station station, Func<ServicePoint, bool> rather) => Nearest(all, station, rather);

    /// <summary>
    /// The points nearest to the edge of a station, in a straight line: first those that <paramref name="rather"/> prefers, then the
    /// nearest to its middle, then the first of the file.
    /// </summary>
    private static IEnumerable<ServicePoint> Nearest(STRtree<Geometry> tree, Station station, Func<ServicePoint, bool> rather)
    {
        if (tree.Count == 0)
        {
            return [];
        }

        var footprint = station.Footprint;
        double most = footprint.Distance(tree.NearestNeighbour(footprint.EnvelopeInternal, footprint, new GeometryItemDistance()))
            + EquallyNear;
        var near = footprint.EnvelopeInternal.Copy();
        near.ExpandBy(most);
        var middle = station.Bounds.Centre.Coordinate;
        return tree.Query(near)
            .Where(g => footprint.Distance(g) <= most)
            .Select(g => ((int Order, ServicePoint Point))g.UserData)
            .OrderBy(p => !rather(p.Point)).ThenBy(p => p.Point.At.Coordinate.Distance(middle)).ThenBy(p => p.Order)
            .Select(p => p.Point);
    }
}
