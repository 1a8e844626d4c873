using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.File;

internal sealed class Unused : Rule
{
    public override string Name => "unused";

    public override RuleGroup Group => RuleGroup.File;

    public override string Says => "A station, store, bin or inner opening is on no flow and nobody stands at it. "
        + "Sinks, what hangs or is on wheels, what serves the building or its people by its label, outer doors, windows, "
        + "vents, doors of staff, plant and toilet rooms are left out, and so is a plan without flows; "
        + "inner doors are looked at only when the plan draws a people flow.";

    public override string Why
        => "What stands in no flow is either forgotten in the flow, so that its crossings are not checked, or not needed, and takes "
            + "floor and money.";

    public override string Mend => "Put it on the flow that uses it, give it a worker, or leave it out.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("A drawn thing has a user", Origin.OwnAssumption),
    ];

    public override string Bad => """
        plan "Honey room"
          units metric
        shell shed 6000 x 3000 x 2500
        room extract "Extracting" clean from west to east
        door d1 extract to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in extract, 4500 from west, centred, 100
        sink s1 hand in extract, 400 x 350, against south wall, 2500 from west
        station uncap "Uncapping bench" in extract
          size 1200 x 600 x 900
          place against north wall, 500 from west
          worker south
        station tank "Settling tank" in extract
          size 700 x 700 x 1000
          place against north wall, 3000 from west
        flow product
          outside -> d1 -> uncap -> d1 -> outside   by hand
        """;

    private static readonly string[] Equipment =
    [
        "air condition", "fan", "heater", "boiler", "water tank", "toilet", "closet", "locker", "hoist", "extinguisher", "first aid",
        "broom", "cooling unit", "compressor", "pump", "softener", "filter", "gas", "fly", "towel", "coat", "clothes", "boot",
    ];

    public override IReadOnlyList<LineChange> Mended => [new("outside ->", "  outside -> d1 -> uncap -> tank -> d1 -> outside   by hand")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var plan = context.Plan;
        if (plan.Flows.Count == 0)
        {
            return [];
        }

        var used = plan.Flows.SelectMany(f => f.Legs).SelectMany(l => new[] { l.From.Name, l.To.Name })
            .Concat(plan.Stations.SelectMany(s => s.Wastes).Select(w => w.BinId).OfType<string>())
            .Concat(context.Space.LegRoutes.SelectMany(l => l.Route?.Openings ?? []).Select(o => o.Id))
            .Concat(plan.Rails.SelectMany(r => r.Through))
            .ToHashSet();
        bool peopleAreDrawn = plan.Flows.Any(f => f.Stream == Stream.People);
        return plan.Stations.Where(s => !used.Contains(s.Id) && NeedsUser(s)).Select(OfStation)
            .Concat(plan.Openings.Where(o => !used.Contains(o.Id) && NeedsUser(o, peopleAreDrawn)).Select(OfOpening));
    }

    // A station that works on the product belongs on a flow even when somebody stands at it.
    private static bool NeedsUser(Station station)
        => !IsEquipment(station) && station.Role != StationRole.Sink
            && (station.Workers.Count == 0 || station.WorkEach is not null || station.Cycle is not null);

    // What serves the building and its people is on no way of goods: it hangs, is wheeled, or its label says what it is.
    private static bool IsEquipment(Station station) => (station.WorkEach is null && station.Cycle is null)
        && (station.Hung || station.Movable || IsAside(station.Room) || Chemicals.AreKeptIn(station)
            || Equipment.Any(word => station.Label.Contains(word, StringComparison.OrdinalIgnoreCase)));

    private static bool NeedsUser(Opening opening, bool peopleAreDrawn)
        => opening is { RoomA: { } a, RoomB: { } b }
            && !IsAside(a) && !IsAside(b)
            && opening.Kind switch
            {
                OpeningKind.Hatch or OpeningKind.Chute => true,
                OpeningKind.Door or OpeningKind.Opening => peopleAreDrawn,
                _ => false,
            };

    private static bool IsAside(Room room) => room.Class is HygieneClass.Staff or HygieneClass.Plant or HygieneClass.Toilet;

    private Finding OfStation(Station station)
        => CheckContext.Find(this, Severity.Note, [station.Id],
            $"{Named.Of(station)} is on no "
                + $"flow{(station.Workers.Count == 0 ? " and nobody stands at it" : ", though it works on the product")}",
            $"put {station.Id} on the flow that uses it, or leave it out", station.Span, station.Bounds.Centre.Coordinate);

    private Finding OfOpening(Opening opening)
        => CheckContext.Find(this, Severity.Note, [opening.Id],
            $"no flow goes through {Named.Of(opening)}",
            $"put {opening.Id} on the flow that uses it, or leave it out", opening.Span, opening.Centre.Coordinate);
}
