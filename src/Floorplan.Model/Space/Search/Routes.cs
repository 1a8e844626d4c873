using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space.Free;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Search;

/// <summary>Turns ways over a map into routes with their rooms and openings.</summary>
internal static class Routes
{
    public static Route? Between(
        FloorMap map, IReadOnlyList<FreePlace> starts, IReadOnlyList<FreePlace> goals, Func<Opening, bool>? mayPass) =>
        starts.Count == 0 || goals.Count == 0 || Find(map, starts, goals, mayPass) is not { } way ? null : Of(way);

    private static Way? Find(
        FloorMap map, IReadOnlyList<FreePlace> starts, IReadOnlyList<FreePlace> goals, Func<Opening, bool>? mayPass) =>
        map.Kept is { } kept
            ? kept.Ways.Find(map, starts, goals, mayPass)
            : new WaySearch(map, mayPass, map.Turns).Find(starts, goals);

    public static Route Reverse(Route route)
        => new((LineString)route.Path.Reverse(), [.. route.Rooms.Reverse()], [.. route.Openings.Reverse()]);

    public static LineString Path(IReadOnlyList<Coordinate> points) =>
        Shape.Factory.CreateLineString(points.Count == 1 ? [points[0], points[0].Copy()] : [.. points]);

    public static Route Of(Way way)
    {
        // A way that only touches a gate line goes in and out of it: it does not pass the opening.
        var gates = new List<Passage>();
        foreach (var gate in way.Gates)
        {
            if (gates.Count > 0 && gates[^1] == gate)
            {
                gates.RemoveAt(gates.Count - 1);
            }
            else
            {
                gates.Add(gate);
            }
        }

        var rooms = new List<Room?> { way.StartRoom };
        foreach (var gate in gates)
        {
            var next = gate.OtherSide(rooms[^1]);
            if (next?.Id != rooms[^1]?.Id)
            {
                rooms.Add(next);
            }
        }

        return new Route(Path(way.Points), rooms, [.. gates.Select(g => g.Opening)]);
    }
}
