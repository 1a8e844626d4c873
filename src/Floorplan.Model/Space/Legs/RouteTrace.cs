using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space.Search;
using NetTopologySuite.Geometries;
using NetTopologySuite.LinearReferencing;

namespace Floorplan.Model.Space.Legs;

/// <summary>Which rooms and openings a drawn line goes through, in order.</summary>
internal static class RouteTrace
{
    public static Route Of(LineString path, Plan plan, Maps maps)
    {
        var along = new LengthIndexedLine(path);
        var rooms = new List<(double At, Room? Room)>();
        foreach (var room in plan.Rooms)
        {
            Add(room.Floor, room);
        }

        var ground = plan.Shell.Outside;
        foreach (var end in new[] { path.StartPoint, path.EndPoint })
        {
            if (!ground.Covers(end))
            {
                rooms.Add((along.Project(end.Coordinate), null));
            }
        }

        var openings = new List<(double At, Opening Opening)>();
        foreach (var passage in maps.Passages)
        {
            if (passage.Hole.Intersects(path.EnvelopeInternal)
                && path.Factory.ToGeometry(passage.Hole) is { } hole
                && hole.Intersects(path))
            {
                openings.Add((along.Project(passage.Middle), passage.Opening));
            }
        }

        var order = new List<Room?>();
        foreach (var (_, room) in rooms.OrderBy(r => r.At))
        {
            if (order.Count == 0 || order[^1]?.Id != room?.Id)
            {
                order.Add(room);
            }
        }

        return new Route(path, order, [.. openings.OrderBy(o => o.At).Select(o => o.Opening)]);

        void Add(Polygon floor, Room room)
        {
            if (!floor.EnvelopeInternal.Intersects(path.EnvelopeInternal))
            {
                return;
            }

            var inside = Overlays.Stretches(path, floor);
            for (int i = 0; i < inside.NumGeometries; i++)
            {
                // A line that only touches a room does not go through it.
                if (inside.GetGeometryN(i) is LineString { IsEmpty: false } piece && (piece.Length > 1 || path.Length <= 1))
                {
                    rooms.Add((along.Project(piece.GetPointN(piece.NumPoints / 2).Coordinate), room));
                }
            }
        }
    }
}
