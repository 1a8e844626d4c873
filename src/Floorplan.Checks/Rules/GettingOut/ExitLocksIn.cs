using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>
/// Cold stores that do not open from inside, units whose only doors are cargo doors, and rooms whose only way out leads through a cold
/// store.
/// </summary>
internal sealed class ExitLocksIn : Rule
{
    public override string Name => "exit-locks-in";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says
        => "People can be shut in: a cold store without an inside release, cargo doors as the only way out, or a way out that leads only "
            + "through a cold store.";

    public override string Why
        => "A cold store door that closes behind a person with no release inside has killed people, and a container's cargo doors are "
            + "barred from outside. A way out through a cold store ends at a door that may be locked or iced up.";

    public override string Mend
        => "Fit an inside release (`opens from inside`), or give the room a door of its own to outside or to another room with an exit.";

    public override string? Caution
        => "A closed steel box is a confined space: fit an inside release and an alarm, and confirm the ways out with the local "
            + "authority before anybody works in it.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "29 CFR 1910.36(d)(1), US CFR: an exit door opens from inside at all times without keys or tools", Origin.FromMemory,
            Force.Law).In("us"),
        new Source(
            "ArbStättV, Germany, annex 2.3: doors on ways out open from inside without aids, emergency exits outward",
            Origin.FoundInPublicCopy, Force.Law).In("de"),
        new Source(
            "Malaysian code of practice for poultry (MY COVP 2017), 6.3: inside release on cold room doors",
            Origin.FoundInPublicCopy, Force.Guidance).In("my").For(Trade.Poultry),
    ];

    public override string Bad => """
        plan "Cold end"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors west
        room pack "Packing" clean from west to 3500
        room hold "Holding" cold from 3500 to east
        partitions thickness 80
        door d1 pack to outside, south wall, 400 from west, 900 x 2050, swings out, closes itself, opens from inside
        door d2 pack to hold, centred, 900 x 2000, swings hold
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("door d2", "door d2 pack to hold, centred, 900 x 2000, swings hold, opens from inside"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var ways = new RoomsWithExit(context.Plan);
        return [.. ColdDoors(context, ways), .. BehindCargoDoors(context, ways), .. ThroughCold(context, ways)];
    }

    private IEnumerable<Finding> ColdDoors(CheckContext context, RoomsWithExit ways)
    {
        foreach (var door in context.Plan.Openings.Where(o => o.Kind == OpeningKind.Door && o.IsWalkable && !o.OpensFromInside))
        {
            foreach (var cold in new[] { door.RoomA, door.RoomB }.OfType<Room>().Where(RoomsWithExit.IsCold).Take(1))
            {
                bool otherWay = ways.Open.Contains(cold.Id);
                string message =
                    $"{Named.Of(door)} of {Named.Of(cold)} does not open from inside{(otherWay ? "" : ", and no other way leads out")}";
                yield return Find(
                    context, otherWay ? Severity.Warning : Severity.Error, [door.Id, cold.Id], message,
                    $"fit an inside release and write `opens from inside` on {door.Id}", door.Span, door.Centre.Coordinate) with
                { NewWords = "opens from inside" };
            }
        }
    }

    private IEnumerable<Finding> BehindCargoDoors(CheckContext context, RoomsWithExit ways)
    {
        foreach (var cargo in context.Plan.Openings.Where(o => o.Kind == OpeningKind.CargoDoor && !o.OpensFromInside))
        {
            foreach (var room in new[] { cargo.RoomA, cargo.RoomB }.OfType<Room>()
                .Where(r => !ways.Open.Contains(r.Id) && !ways.HasLockedColdDoor.Contains(r.Id)))
            {
                yield return Find(
                    context, Severity.Error, [room.Id, cargo.Id],
                    $"the cargo doors are the only way out of {Named.Of(room)}, and they are barred from outside",
                    $"give {Named.Of(room)} a door to outside, or to a room that has one", room.Span, cargo.Centre.Coordinate);
            }
        }
    }

    private IEnumerable<Finding> ThroughCold(CheckContext context, RoomsWithExit ways)
    {
        foreach (
            var room in context.Plan.Rooms.Where(r => !RoomsWithExit.IsCold(r)
                && ways.Open.Contains(r.Id)
                && !ways.OpenAndWarm.Contains(r.Id)))
        {
            yield return Find(
                context, Severity.Warning, [room.Id], $"the only way out of {Named.Of(room)} leads through a cold store",
                $"give {Named.Of(room)} a door to outside, or to a room that has one", room.Span, room.Floor.InteriorPoint.Coordinate);
        }
    }

    private Finding Find(
        CheckContext context, Severity severity, IReadOnlyList<string> things, string message, string mend, SourceSpan span, Coordinate at)
        => CheckContext.Find(
            this, severity, things, message, mend, span, at) with
        { Limit = $"a way out that opens from inside ({context.SourceOf(this).Text})" };
}
