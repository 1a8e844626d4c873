using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>Cold stores that do not open from inside, units whose only doors are cargo doors, and rooms whose only way out leads through a cold store.</summary>
public sealed class ExitLocksIn : Rule
{
    public override string Name => "exit-locks-in";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says => "People can be shut in: a cold store without an inside release, cargo doors as the only way out, or a way out that leads only through a cold store.";

    public override string Why => "A cold store door that closes behind a person with no release inside has killed people, and a container's cargo doors are barred from outside. A way out through a cold store ends at a door that may be locked or iced up.";

    public override string Mend => "Fit an inside release (`opens from inside`), or give the room a door of its own to outside or to another room with an exit.";

    public override string? Caution => "A closed steel box is a confined space: fit an inside release and an alarm, and confirm the ways out with the local authority before anybody works in it.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("29 CFR 1910.36(d)(1), US CFR: an exit door opens from inside at all times without keys or tools", Origin.FromMemory, Force.Law),
        new("Malaysian code of practice for poultry (MY COVP 2017), 6.3: inside release on cold room doors", Origin.FoundInPublicCopy),
    ];

    public override string Bad => Box("swings hold");

    public override string Good => Box("swings hold, opens from inside");

    public override IEnumerable<Finding> Check(CheckContext context) => [.. ColdDoors(context), .. NoExit(context), .. ThroughCold(context)];

    private IEnumerable<Finding> ColdDoors(CheckContext context)
    {
        foreach (var door in context.Plan.Openings.Where(o => o.IsWalkable && o.Kind == OpeningKind.Door && !o.OpensFromInside))
        {
            if ((IsCold(door.RoomA) ? door.RoomA : IsCold(door.RoomB) ? door.RoomB : null) is { } cold && !(IsCold(door.RoomA) && IsCold(door.RoomB)))
            {
                yield return Find([door.Id, cold.Id], $"door {door.Id} of {Named.Of(cold)} does not open from inside", $"write `opens from inside` on {door.Id} and fit an inside release", door.Span, door.Centre.Coordinate);
            }
        }
    }

    private IEnumerable<Finding> NoExit(CheckContext context)
    {
        var cargo = context.Plan.Openings.Where(o => o.Kind == OpeningKind.CargoDoor).ToList();
        if (cargo.Count > 0 && !context.Plan.Openings.Any(Exits.IsExit))
        {
            yield return Find([.. cargo.Select(c => c.Id)], "the cargo doors are the only way out, and they are barred from outside", "add a door to outside that opens from inside", context.Plan.Shell.Span, cargo[0].Centre.Coordinate);
        }
    }

    private IEnumerable<Finding> ThroughCold(CheckContext context)
    {
        var exits = context.Plan.Openings.Where(o => Exits.IsExit(o) && !TouchesCold(o)).ToList();
        foreach (var room in context.Plan.Rooms.Where(r => !IsCold(r) && context.Plan.Stations.Any(s => s.Room.Id == r.Id && s.Workers.Count > 0)))
        {
            var station = context.Plan.Stations.First(s => s.Room.Id == room.Id && s.Workers.Count > 0);
            var from = station.Workers[0].Centre.Coordinate;
            bool any = context.Space.FindExit(room, from, Mover.Person, Exits.IsExit) is { } way && way.Rooms.Any(IsCold);
            bool other = exits.Exists(e => context.Space.Find(room, from, null, e.Centre.Coordinate, Mover.Person, o => !TouchesCold(o)) is not null);
            if (any && !other)
            {
                yield return Find([room.Id], $"the only way out of {Named.Of(room)} leads through a cold store", $"give {Named.Of(room)} a door to outside, or to a room that has one", room.Span, from);
            }
        }
    }

    private Finding Find(IReadOnlyList<string> things, string message, string mend, Language.Text.SourceSpan span, Coordinate at)
        => CheckContext.Find(this, Severity.Error, things, message, mend, span, at) with { Limit = $"a way out that opens from inside ({Sources[0].Text})" };

    private static bool IsCold(Room? room) => room?.Class == HygieneClass.Cold;

    private static bool TouchesCold(Opening opening) => IsCold(opening.RoomA) || IsCold(opening.RoomB);

    private static string Box(string door) => $"""
        plan "Cold end"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors west
        room pack "Packing" clean from west to 3500
        room hold "Holding" cold from 3500 to east
        partitions thickness 80
        door d1 pack to outside, south wall, 400 from west, 900 x 2050, swings out, opens from inside
        door d2 pack to hold, centred, 900 x 2000, {door}
        """;
}
