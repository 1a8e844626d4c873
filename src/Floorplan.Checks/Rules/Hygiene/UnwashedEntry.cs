using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Graphs;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class UnwashedEntry : Rule
{
    public override string Name => "unwashed-entry";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "People come into a clean or cold room from outside, a dirty room or a toilet without a hand sink on the way, or without a "
            + "staff room to change boots and coat in. "
        + "When the plan draws no people flow, the way in through the fewest rooms is looked at instead, as a note, and a hand sink in "
        + "the room itself is enough.";

    public override string Why
        => "Hands and boots are the shortest way from the yard to the product. People wash when the sink stands in their way, not when "
            + "it stands beside it.";

    public override string Mend
        => "Lead the way in through a staff room with a hand sink, or put a hand sink just inside the door and name it in the `flow "
            + "people`.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "Food Code 2022, 5-204.11: hand sinks where food is handled and in or next to toilet rooms", Origin.FromMemory,
            Force.ModelCode).In("us").Of(PlantOf.Retail),
        .. Published.HandSinks,
        HygieneSources.Mobile,
        new Source(
            "Malaysia, veterinary code of practice for poultry plants 2017, 9.2.2: staff of the edible side do not cross inedible rooms",
            Origin.FoundInPublicCopy, Force.Guidance).In("my").For(Trade.Poultry),
        HygieneSources.Ranks,
    ];

    public override string Bad => """
        plan "Cheese hut"
          units metric
        shell shed 8000 x 3000 x 2500
        room lobby "Change" staff from west to 2000
        room make  "Cheese room" clean from 2000 to east
        partitions thickness 80
        door d1 lobby to outside, west wall, 1000 from south, 900 x 2050, swings out, closes itself
        door d2 lobby to make, 1000 from south, 900 x 2050, swings lobby, closes itself
        drain fd1 floor in make, 3500 from west, centred, 100
        sink s2 hand in make, 400 x 350, against south wall, 2500 from west
        station vat "Cheese vat" in make
          size 1500 x 600 x 900
          place against north wall, 2000 from west
          worker south
        flow people
          outside -> d1 -> d2 -> vat
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("sink s2", "sink s1 hand in lobby, 400 x 350, against north wall, 600 from west"),
        new("outside ->", "  outside -> d1 -> s1 -> d2 -> vat"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
        => context.Plan.Flows.Any(f => f.Stream == Stream.People) ? AsDrawn(context) : AsWalked(context);

    private IEnumerable<Finding> AsDrawn(CheckContext context)
    {
        var sinks = RoomsWithHandSink(context);
        bool nobodyChanges = ChangingPlaceMissing.Holds(context.Plan);
        foreach (var chain in Journey.Of(context.Space, Stream.People).GroupBy(j => (j.Flow.Span.Start, j.Legs[0].Leg.Chain)))
        {
            var entry = new Entry(sinks, beganInside: chain.First().FromRoom is not null);
            foreach (var journey in chain)
            {
                if (entry.Walk(journey.Rooms, journey.To, journey.Legs[0].Leg.Period == Period.During) is { } fault
                    && (fault.Unwashed || !nobodyChanges))
                {
                    string who = journey.Flow.Label.Length == 0 ? "people" : journey.Flow.Label;
                    yield return Found(fault, Severity.Warning, $"{who} reach {Named.Of(fault.Room)} on the way to {Named.Of(journey.To)}",
                        journey.Things, journey.Legs[^1].Leg.Span, journey.Legs[^1].Route);
                }
            }
        }
    }

    private IEnumerable<Finding> AsWalked(CheckContext context)
    {
        var sinks = RoomsWithHandSink(context);
        var worked = context.Plan.Stations.Where(s => s.Workers.Count > 0).Select(s => s.Room.Id).ToHashSet();
        var rooms = context.Plan.Rooms.ToDictionary(r => r.Id);
        var ways = RoomWays.OnFoot(context.Plan).Fewest(RoomWays.Outside);
        foreach (
            var room in context.Plan.Rooms.Where(r => r.Class is HygieneClass.Clean or HygieneClass.Cold
                && worked.Contains(r.Id)
                && !sinks.Contains(r.Id)))
        {
            if (ways.TryGetValue(room.Id, out var way)
                && new Entry(sinks, beganInside: false).Walk([.. way.Select(rooms.GetValueOrDefault)], null,
                    true) is { Unwashed: true } fault)
            {
                yield return Found(
                    fault, Severity.Note, $"by the way in through the fewest rooms people reach {Named.Of(fault.Room)}", [], room.Span,
                    null);
            }
        }
    }

    private Finding Found(Fault fault, Severity severity, string start, IReadOnlyList<string> things, SourceSpan span, Route? route)
        => CheckContext.Find(this, fault.Unwashed ? severity : Severity.Note, [.. things.Append(fault.Room.Id).Distinct()],
            fault.Unwashed ? $"{start} without passing a hand sink" : $"{start} without a staff room to change boots and coat in",
            fault.Unwashed
                ? $"put a hand sink in the room before {Named.Of(fault.Room)}, or just inside its door, and lead the `flow people` past it"
                : $"carve a room of class `staff` in front of {Named.Of(fault.Room)}",
            span, route is { } way && Overlays.Stretches(way.Path, fault.Room.Floor) is { IsEmpty: false } inside
                ? inside.Coordinate
                : fault.Room.Floor.InteriorPoint.Coordinate);

    private static HashSet<string> RoomsWithHandSink(CheckContext context)
        => [.. context.Plan.Stations.Where(s => s.IsHandSink).Select(s => s.Room.Id)];

    /// <param name="Unwashed">No hand sink on the way; otherwise only the change is missing.</param>
    private sealed record Fault(Room Room, bool Unwashed);

    /// <summary>One person on the way through the rooms; what is said once about one way is not said again farther on.</summary>
    /// <param name="beganInside">Who is at work already came in, washed and changed, by another line; what is dirty on the way
    /// counts.</param>
    private sealed class Entry(HashSet<string> sinks, bool beganInside)
    {
        private bool washed = beganInside;
        private bool changed = beganInside;
        private bool said;
        private bool onCleanSide;
        private bool crossed;

        public Fault? Walk(IReadOnlyList<Room?> rooms, Stop? to, bool atWork)
        {
            Fault? fault = null;
            for (int i = 0; i < rooms.Count; i++)
            {
                fault ??= Step(rooms[i], i == rooms.Count - 1 && to is StationStop { Station.IsHandSink: true }, atWork);
            }

            return fault;
        }

        private Fault? Step(Room? room, bool sinkIsTheStop, bool atWork)
        {
            if (room?.Class is HygieneClass.Clean or HygieneClass.Cold)
            {
                // A sink just inside the door, and used first, is as good as one before it.
                washed |= sinkIsTheStop;
                bool toldOf = crossed && washed && atWork;
                (onCleanSide, crossed) = (true, false);
                if (said || toldOf || (washed && changed))
                {
                    return null;
                }

                said = true;
                return new Fault(room, !washed);
            }

            // Who comes back through a dirty room and has washed is the finding of staff-crosses-back.
            crossed = room?.Class is HygieneClass.Dirty or HygieneClass.Plant && (onCleanSide || crossed);
            onCleanSide = false;
            bool clears = HygieneRank.Of(room) == 0;
            washed = (room is not null && sinks.Contains(room.Id)) || (washed && !clears);
            changed = room?.Class == HygieneClass.Staff || (changed && !clears);
            said &= !clears;
            return null;
        }
    }
}
