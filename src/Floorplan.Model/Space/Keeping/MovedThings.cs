using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Space.Keeping;

/// <summary>
/// Turns the things of a plan into those of a later one with the same things in the same order, so that what was worked out on the one can
/// be told of the other.
/// </summary>
public sealed class MovedThings
{
    private readonly Dictionary<object, object> byObject = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, Room> rooms = [];
    private readonly Dictionary<string, Opening> openings = [];
    private readonly Dictionary<string, Station> stations = [];

    public MovedThings(Plan from, Plan to)
    {
        Add(from.Rooms, to.Rooms, rooms, r => r.Id);
        Add(from.Openings, to.Openings, openings, o => o.Id);
        Add(from.Stations, to.Stations, stations, s => s.Id);
    }

    public Room? Of(Room? room) => room is null ? null : Find(room, rooms, room.Id);

    public Opening? Of(Opening? opening) => opening is null ? null : Find(opening, openings, opening.Id);

    public Station Of(Station station) => Find(station, stations, station.Id);

    /// <summary>Keeps the path as it is.</summary>
    public Route? Of(Route? route) =>
        route is null ? null : new Route(route.Path, [.. route.Rooms.Select(Of)], [.. route.Openings.Select(o => Of(o)!)]);

    private void Add<T>(IReadOnlyList<T> from, IReadOnlyList<T> to, Dictionary<string, T> byId, Func<T, string> id)
        where T : class
    {
        for (int i = 0; i < from.Count; i++)
        {
            byObject[from[i]] = to[i];
            byId.TryAdd(id(to[i]), to[i]);
        }
    }

    /// <summary>Copies of a thing, as a changed plan makes them, go by their id.</summary>
    private T Find<T>(T thing, Dictionary<string, T> byId, string id)
        where T : class => byObject.TryGetValue(thing, out object? moved) ? (T)moved : byId[id];
}
