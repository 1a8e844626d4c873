using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>Which rooms (by id) a person can leave, door by door, when nobody outside helps.</summary>
internal sealed class WaysOut
{
    private const string Outside = "";

    public WaysOut(Plan plan)
    {
        var byRoom = plan.Openings
            .Where(o => o.IsPassage)
            .SelectMany(o => new[] { (Into: Id(o.RoomB), From: o.RoomA, Opening: o), (Into: Id(o.RoomA), From: o.RoomB, Opening: o) })
            .Where(way => way.From is not null)
            .ToLookup(way => way.Into, way => (From: way.From!, way.Opening));
        Open = Reached(byRoom, throughCold: true);
        OpenAndWarm = Reached(byRoom, throughCold: false);
        HasLockedColdDoor = byRoom.SelectMany(g => g)
            .Where(w => IsCold(w.From) && w.Opening.Kind == OpeningKind.Door && !w.Opening.OpensFromInside)
            .Select(w => w.From.Id)
            .ToHashSet();
    }

    /// <summary>Rooms with a way out through doors that open.</summary>
    public IReadOnlySet<string> Open { get; }

    /// <summary>Rooms whose way out leads through no cold store; a cold store itself is left, not led through.</summary>
    public IReadOnlySet<string> OpenAndWarm { get; }

    /// <summary>Cold stores with a door that does not open from inside.</summary>
    public IReadOnlySet<string> HasLockedColdDoor { get; }

    public static bool IsCold(Room room) => room.Class == HygieneClass.Cold;

    /// <summary>From outside back through every door that can be opened from the farther room.</summary>
    private static HashSet<string> Reached(ILookup<string, (Room From, Opening Opening)> byRoom, bool throughCold)
    {
        var reached = new HashSet<string>();
        var queue = new Queue<string>([Outside]);
        while (queue.TryDequeue(out string? into))
        {
            foreach (var (from, opening) in byRoom[into])
            {
                if (OpensFrom(from, opening) && reached.Add(from.Id) && (throughCold || !IsCold(from)))
                {
                    queue.Enqueue(from.Id);
                }
            }
        }

        return reached;
    }

    /// <summary>Cargo doors and cold store doors latch from outside unless the plan says otherwise; other doors open from both sides.</summary>
    private static bool OpensFrom(Room room, Opening opening) =>
        opening.OpensFromInside || (opening.Kind != OpeningKind.CargoDoor && !(IsCold(room) && opening.Kind == OpeningKind.Door));

    private static string Id(Room? room) => room?.Id ?? Outside;
}
