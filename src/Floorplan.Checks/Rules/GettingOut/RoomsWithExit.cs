using Floorplan.Model;
using Floorplan.Model.Graphs;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>Which rooms (by id) a person can leave, door by door, when nobody outside helps.</summary>
internal sealed class RoomsWithExit
{
    public RoomsWithExit(Plan plan)
    {
        Open = Leaving(plan, throughCold: true);
        OpenAndWarm = Leaving(plan, throughCold: false);
        HasLockedColdDoor = plan.Openings
            .Where(o => o.IsPassage && o.Kind == OpeningKind.Door && !o.OpensFromInside)
            .SelectMany(o => new[] { o.RoomA, o.RoomB }.OfType<Room>().Where(IsCold))
            .Select(r => r.Id)
            .ToHashSet();
    }

    /// <summary>Rooms with a way out through doors that open.</summary>
    public IReadOnlySet<string> Open { get; }

    /// <summary>Rooms whose way out leads through no cold store; a cold store itself is left, not led through.</summary>
    public IReadOnlySet<string> OpenAndWarm { get; }

    /// <summary>Cold stores with a door that does not open from inside.</summary>
    public IReadOnlySet<string> HasLockedColdDoor { get; }

    public static bool IsCold(Room room) => room.Class == HygieneClass.Cold;

    /// <summary>Through every door that can be opened from the room that is left.</summary>
    private static IReadOnlySet<string> Leaving(Plan plan, bool throughCold) => RoomWays
        .Of(plan, (opening, from, to) => opening.IsPassage
            && from is not null
            && OpensFrom(from, opening)
            && (throughCold || to is null || !IsCold(to)))
        .LeadingTo([RoomWays.Outside]);

    /// <summary>
    /// Cargo doors and cold store doors latch from outside unless the plan says otherwise; other doors open from both sides.
    /// </summary>
    private static bool OpensFrom(Room room, Opening opening) =>
        opening.OpensFromInside || (opening.Kind != OpeningKind.CargoDoor && !(IsCold(room) && opening.Kind == OpeningKind.Door));
}
