using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using NetTopologySuite.Geometries;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Framework;

/// <summary>One stretch of a flow from one real stop to the next; doors named between them are only on the way.</summary>
/// <param name="Legs">Its legs in order, with what each does on the floor.</param>
/// <param name="FromRoom">Null is outside.</param>
/// <param name="ToRoom">Null is outside.</param>
/// <param name="Rooms">Rooms walked through in order, both ends included, null for outside; no two neighbours the same.</param>
internal sealed record Journey(
    Flow Flow, Stop From, Stop To, IReadOnlyList<LegRoute> Legs, Room? FromRoom, Room? ToRoom, IReadOnlyList<Room?> Rooms)
{
    /// <summary>Ids that findings name: both stops, without outside.</summary>
    public IReadOnlyList<string> Things => [.. new[] { From, To }.Where(s => s is not OutsideStop).Select(s => s.Name).Distinct()];

    /// <summary>All journeys of one kind of stream, flow by flow and chain by chain, in the order written.</summary>
    public static IEnumerable<Journey> Of(FloorSpace space, Stream stream) => Of(space.LegRoutes.Where(l => l.Flow.Stream == stream));

    /// <summary>All journeys that these legs make up, in the order written.</summary>
    public static IEnumerable<Journey> Of(IEnumerable<LegRoute> legs)
        => legs
            .GroupBy(l => (l.Flow, l.Leg.Chain), new ByChain())
            .SelectMany(chain => Split([.. chain]));

    /// <summary>The first stretch of floor of a room that it goes over; null where it only touches the room.</summary>
    public Geometry? FirstStretchIn(Room room) => Legs
        .Select(l => l.Route is { } way ? Overlays.Stretches(way.Path, room.Floor) : null)
        .FirstOrDefault(s => s is { IsEmpty: false });

    /// <summary>Whether things go from one end to the other through a closed pipe.</summary>
    public bool IsPiped => Legs.All(l => l.Leg.Carriage.Kind == CarriageKind.Pump);

    /// <summary>The room that a stop is in; null for outside and for openings.</summary>
    public static Room? RoomOf(Stop stop) => stop switch
    {
        StationStop s => s.Station.Room,
        ServiceStop s => s.Service.Room,
        RoomStop r => r.Room,
        _ => null,
    };

    private static IEnumerable<Journey> Split(IReadOnlyList<LegRoute> chain)
    {
        int start = 0;
        for (int i = 0; i < chain.Count; i++)
        {
            if (chain[i].Leg.To is OpeningStop && i + 1 < chain.Count)
            {
                continue;
            }

            yield return Make([.. chain.Skip(start).Take(i + 1 - start)]);
            start = i + 1;
        }
    }

    private static Journey Make(IReadOnlyList<LegRoute> legs)
    {
        var (from, to) = (legs[0].Leg.From, legs[^1].Leg.To);
        var rooms = new List<Room?>();
        foreach (var room in legs.SelectMany(l => l.Route?.Rooms ?? []))
        {
            if (rooms.Count == 0 || rooms[^1]?.Id != room?.Id)
            {
                rooms.Add(room);
            }
        }

        var first = from is OpeningStop && rooms.Count > 0 ? rooms[0] : RoomOf(from);
        var last = to is OpeningStop && rooms.Count > 0 ? rooms[^1] : RoomOf(to);
        return new Journey(legs[0].Flow, from, to, legs, first, last, rooms);
    }

    /// <summary>Two flows of the same words are still two flows.</summary>
    private sealed class ByChain : IEqualityComparer<(Flow Flow, int Chain)>
    {
        public bool Equals((Flow Flow, int Chain) x, (Flow Flow, int Chain) y) => ReferenceEquals(x.Flow, y.Flow) && x.Chain == y.Chain;

        public int GetHashCode((Flow Flow, int Chain) key)
            => HashCode.Combine(System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(key.Flow), key.Chain);
    }
}
