using Floorplan.Model;
using Floorplan.Model.Graphs;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>Rooms that people can walk between without going outside, and the exits that they share.</summary>
internal sealed record JoinedRooms(IReadOnlyList<Room> Rooms, IReadOnlyList<Opening> Exits)
{
    /// <summary>All groups of a plan, in the order of their first rooms.</summary>
    public static IEnumerable<JoinedRooms> Of(Plan plan)
    {
        var rooms = plan.Rooms.ToDictionary(r => r.Id);
        var exits = plan.Openings.Where(Measuring.Exits.IsExit).ToLookup(o => (o.RoomA ?? o.RoomB)!.Id);
        return RoomWays.Inside(plan).Groups()
            .Select(g => new JoinedRooms([.. g.Select(id => rooms[id])], [.. g.SelectMany(id => exits[id])]));
    }
}
