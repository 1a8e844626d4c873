using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;

namespace Floorplan.Model.Graphs;

/// <summary>Rooms and the outside, joined by openings, as a graph.</summary>
public static class RoomWays
{
    /// <summary>Stands for everything outside the shell; no room has this id.</summary>
    public const string Outside = "";

    /// <summary>Through the openings that people walk through, both ways, and outside.</summary>
    public static WayGraph OnFoot(Plan plan) => Of(plan, (opening, _, _) => opening.IsWalkable);

    /// <summary>Through the openings that people walk through, without going outside.</summary>
    public static WayGraph Inside(Plan plan) => new(
        plan.Rooms.Select(r => r.Id),
        Steps(plan).Where(s => s.From is not null && s.To is not null && s.Opening.IsWalkable)
            .Select(s => new Link(s.From!.Id, s.To!.Id, s.Opening)));

    /// <param name="goes">Whether one gets through an opening from the first room to the second; null is outside.</param>
    public static WayGraph Of(Plan plan, Func<Opening, Room?, Room?, bool> goes) => new(
        plan.Rooms.Select(r => r.Id).Prepend(Outside),
        Steps(plan).Where(s => goes(s.Opening, s.From, s.To)).Select(s => new Link(IdOf(s.From), IdOf(s.To), s.Opening)));

    public static string IdOf(Room? room) => room?.Id ?? Outside;

    private static IEnumerable<(Opening Opening, Room? From, Room? To)> Steps(Plan plan) =>
        plan.Openings.SelectMany(o => new[] { (o, o.RoomA, o.RoomB), (o, o.RoomB, o.RoomA) });
}
