using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using NetTopologySuite.Geometries;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class RawReturnsCross : Rule
{
    public override string Name => "raw-returns-cross";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "Crates, knives or trolleys that come back (`flow returns`) go unwashed into a clean or cold room, or share floor with "
            + "product of the clean side at the same time of day. "
        + "A sink that is not for hands, or a station with hot water or steam, washes them. What is brought in after work is washed down "
        + "with the room, and does not count.";

    public override string Why
        => "A crate that comes back carries slime, blood and the lorry's floor on its underside. Set down beside packed goods it hands "
            + "all of it on.";

    public override string Mend
        => "Wash what comes back on the dirty side, hand it on through a hatch, and name the washing place in the `flow returns`.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "Reg (EC) 853/2004 Annex III s.II ch.II(6): a separate place to wash and disinfect crates and vehicles",
            Origin.FoundInPublicCopy, Force.Law),
        HygieneSources.OneWayFlow, HygieneSources.NoCrossFlow,
        new(
            "Unwashed until a washing place is named on the way; washed down with the room when brought in after work",
            Origin.OwnAssumption),
    ];

    public override string Bad => """
        plan "Eel unit"
          units metric
        shell shed 9000 x 3000 x 2500
        room gut "Gutting" dirty from west to 4000
        room pack "Packing" clean from 4000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 pack to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself
        hatch h1 gut to pack, 300 from south, 700 x 500, sill 950
        drain fd1 floor in gut, 2000 from west, centred, 100
        drain fd2 floor in pack, 2000 from west, centred, 100
        sink s2 hand in pack, 400 x 350, against south wall, 2000 from west
        sink tub wash in gut, 900 x 600, against north wall, 1500 from west
        station table "Packing table" in pack
          size 1500 x 600 x 900
          place against north wall, 1500 from west
          worker south
        flow product
          outside -> d1 -> h1 -> table   by hand, after work
          table -> d2 -> outside         by hand, after work
        flow returns "Crates"
          outside -> d2 -> table   by hand
        """;

    public override IReadOnlyList<LineChange> Mended => [new("outside -> d2", "  outside -> d1 -> tub -> h1 -> table   by hand")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (!context.Plan.Flows.Any(f => f.Stream == Stream.Returns))
        {
            return [];
        }

        var ways = new ReturnWays(context);
        return [.. ways.Entries.Where(e => e.Journey.Legs[0].Leg.Period != Period.After).Select(Entry), .. Crossings(context, ways)];
    }

    private Finding Entry((Journey Journey, Room Room) entry)
    {
        var (journey, room) = entry;
        var inside = journey.FirstStretchIn(room);
        return CheckContext.Find(this, Severity.Warning, [.. journey.Things.Append(room.Id).Distinct()],
            $"{What(journey.Flow)} from {Named.Of(journey.From)} to {Named.Of(journey.To)} come unwashed into {Named.Of(room)}",
            $"lead them past a washing place before {Named.Of(room)}, such as a `sink … wash` on the dirty side, and name it in the "
                + "`flow returns`",
            journey.Legs[0].Leg.Span, inside?.InteriorPoint.Coordinate ?? room.Floor.InteriorPoint.Coordinate);
    }

    private IEnumerable<Finding> Crossings(CheckContext context, ReturnWays ways)
    {
        var clean = Journey.Of(context.Space, Stream.Product).Where(j => ReturnWays.IsClean(j.FromRoom))
            .SelectMany(j => j.Legs.Select(l => (l.Leg, Journey: j)))
            .ToDictionary(p => (object)p.Leg, p => p.Journey, ReferenceEqualityComparer.Instance);
        var told = ways.Entries.ToDictionary(e => (e.Journey.Flow.Span.Start, e.Journey.Legs[0].Leg.Chain), e => e.Room);
        return context.Space.Meetings
            .Select(m => m.First.Flow.Stream == Stream.Returns
                ? (Back: m.First, Product: m.Second, Meeting: m)
                : (Back: m.Second, Product: m.First, Meeting: m))
            .Where(m => m.Back.Flow.Stream == Stream.Returns && m.Back.Leg.Period == m.Product.Leg.Period
                && clean.ContainsKey(m.Product.Leg) && ways.IsUnwashed(m.Back.Leg)
                && m.Product.Leg.Carriage.Kind is not (CarriageKind.Pump or CarriageKind.Chute))
            .Select(m => new Crossing(m.Meeting, m.Back, m.Product, clean[m.Product.Leg], RoomAt(context.Plan.Rooms, m.Meeting.At)))
            .Where(c => !ReturnWays.IsClean(c.Room) && !IsToldOf(told, c))
            .GroupBy(
                c => (Back: c.Back.Flow.Span.Start, c.Back.Leg.Chain, Product: c.On.Flow.Span.Start, Place: c.Doors.FirstOrDefault()?.Id
                    ?? c.Room?.Id))
            .Select(g => Found(context, g.MaxBy(c => c.SharedMm)!));
    }

    private Finding Found(CheckContext context, Crossing c)
    {
        var shared = context.Facts.Ways.Shared[c.Meeting];
        string how = shared.Value > Touch.ToleranceMm ? $"share {shared.Text} of floor with" : "cross";
        string where = c.Doors.Count > 0 ? "at " + Named.List(c.Doors.Select(Named.Of)) : "in " + Named.Of(c.Room);
        return CheckContext.Find(this, Severity.Warning,
            [.. c.Doors.Select(d => d.Id).Concat(c.On.Things)
                .Concat(new[] { c.Back.Leg.From, c.Back.Leg.To }.Where(s => s is not OutsideStop).Select(s => s.Name))
                    .Concat(c.Room is null ? [] : [c.Room.Id]).Distinct()],
            $"unwashed {What(c.Back.Flow)} {how} clean product on its way from {Named.Of(c.On.From)} to {Named.Of(c.On.To)} {where}, at "
                + "the same time of day",
            "bring them back another way, or `after work`", c.Back.Leg.Span, c.At) with
        { Measured = shared.Value, Figures = [shared] };
    }

    /// <summary>Things that come in where clean product leaves are told of by the room that they come into.</summary>
    private static bool IsToldOf(Dictionary<(int Flow, int Chain), Room> told, Crossing c)
        => told.TryGetValue((c.Back.Flow.Span.Start, c.Back.Leg.Chain), out var room) && c.On.Rooms.Any(r => r?.Id == room.Id);

    private static string What(Flow flow) => flow.Label.Length == 0 ? "returns" : flow.Label;

    private static Room? RoomAt(IReadOnlyList<Room> rooms, Coordinate at)
        => rooms.FirstOrDefault(r => r.Floor.Covers(Shape.Factory.CreatePoint(at)));

    private sealed record Crossing(Meeting Meeting, LegRoute Back, LegRoute Product, Journey On, Room? Room)
    {
        public Coordinate At => Meeting.At;

        public double SharedMm => Meeting.SharedMm;

        public IReadOnlyList<Opening> Doors { get; } =
            [.. (Back.Route?.Openings ?? []).IntersectBy((Product.Route?.Openings ?? []).Select(o => o.Id), o => o.Id)];
    }
}
