using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>Rooms that people can walk between without going outside, and the exits that they share.</summary>
internal sealed record JoinedRooms(IReadOnlyList<Room> Rooms, IReadOnlyList<Opening> Exits)
{
    /// <summary>All groups of a plan, in the order of their first rooms.</summary>
    public static IEnumerable<JoinedRooms> Of(Plan plan)
    {
        var walkable = plan.Openings.Where(o => o.IsWalkable && o.RoomA is not null && o.RoomB is not null).ToList();
        var beside = walkable.Select(o => (From: o.RoomA!.Id, To: o.RoomB!))
            .Concat(walkable.Select(o => (From: o.RoomB!.Id, To: o.RoomA!)))
            .ToLookup(p => p.From, p => p.To);
        var exits = plan.Openings.Where(Measuring.Exits.IsExit).ToLookup(o => (o.RoomA ?? o.RoomB)!.Id);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var room in plan.Rooms.Where(r => seen.Add(r.Id)))
        {
            var group = new List<Room> { room };
            for (int i = 0; i < group.Count; i++)
            {
                group.AddRange(beside[group[i].Id].Where(r => seen.Add(r.Id)));
            }

            yield return new JoinedRooms(group, [.. group.SelectMany(r => exits[r.Id])]);
        }
    }
}
