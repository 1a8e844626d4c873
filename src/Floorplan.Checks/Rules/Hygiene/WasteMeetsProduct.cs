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

internal sealed class WasteMeetsProduct : Rule
{
    /// <summary>
    /// Handing waste over at the station where it falls is no crossing: this far from a stop of both legs. A worker's arm to either
    /// side; own assumption.
    /// </summary>
    private const double HandOverMm = 900;

    public override string Name => "waste-meets-product";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "The real routes of waste and of product cross or share floor or a doorway. At the same time of day this is a warning; at "
            + "different times a note where they share a doorway or clean floor, because it must be washed between.";

    public override string Why
        => "A dripping offal bin wheeled across the packing floor undoes the day's cleaning, and wheels and boots carry it on.";

    public override string Mend
        => "Give waste its own door or chute, carry it out after the day's work and wash down, or move the bin to the other side of the "
            + "bench.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        HygieneSources.NoCrossFlow, HygieneSources.SpaceOrTime, HygieneSources.OneWayFlow,
        new("Waste handed over within 900 mm of the station where it falls does not count as a crossing", Origin.OwnAssumption),
    ];

    public override string Bad => """
        plan "Perch unit"
          units metric
        shell shed 9000 x 3000 x 2500
        room gut "Gutting" dirty from west to east
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in gut, 4500 from west, centred, 100
        sink s1 hand in gut, 400 x 350, against south wall, 4600 from west
        station bench "Gutting bench" in gut
          size 1500 x 600 x 900
          place against north wall, 4000 from west
          worker south
        bin offal 60 L in gut, 450 x 450, against north wall, 6500 from west
        flow product
          outside -> d1 -> bench   by hand
        flow waste
          bench -> offal           by hand
          offal -> d1 -> outside   by trolley 500 wide
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("door d1", "door d2 gut to outside, south wall, 500 from east, 900 x 2050, swings out, closes itself"),
        new("offal ->", "  offal -> d2 -> outside   by trolley 500 wide"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var journeys = Journey.Of(context.Space, Stream.Waste).Concat(Journey.Of(context.Space, Stream.Product))
            .SelectMany(j => j.Legs.Select(l => (l.Leg, Journey: j)))
            .ToDictionary(p => (object)p.Leg, p => p.Journey, ReferenceEqualityComparer.Instance);
        return context.Space.Meetings
            .Select(m => Ordered(m, journeys))
            .OfType<Crossing>()
            .Where(c => !IsHandOver(c) && !IsInTheYard(context.Plan.Rooms, c) && (c.SameTime || MattersLater(context.Plan.Rooms, c)))
            .GroupBy(
                c => (Waste: c.WasteOn.Legs[0].Leg.Span.Start, Product: c.SameTime ? c.Product.Flow.Span.Start : 0,
                    Place: c.SameTime ? PlaceOf(context.Plan.Rooms, c) : ""))
            .Select(g => Found(context, [.. g.OrderBy(c => c.SameTime ? 0 : 1)]));
    }

    private Finding Found(CheckContext context, IReadOnlyList<Crossing> crossings)
    {
        var worst = crossings[0];
        var doors = Shared(worst).ToList();
        string where = doors.Count > 0
            ? "at " + Named.List(doors.Select(Named.Of))
            : "in " + Named.Of(RoomAt(context.Plan.Rooms, worst.At));
        var shared = context.Facts.Ways.Shared[crossings.MaxBy(c => c.SharedMm)!.Meeting];
        string how = shared.Value > Touch.ToleranceMm ? $"shares {shared.Text} of floor with" : "crosses";
        string when = worst.SameTime ? "at the same time of day" : "at another time of day";
        string mend = worst.SameTime
            ? "give the waste another way out, or carry it `after work` and wash down"
            : "wash down between the two, and write down who does it";
        return CheckContext.Find(this, worst.SameTime ? Severity.Warning : Severity.Note,
            [.. doors.Select(d => d.Id).Concat(worst.WasteOn.Things).Concat(worst.ProductOn.Things)
                .Concat(RoomAt(context.Plan.Rooms, worst.At) is { } room ? [room.Id] : []).Distinct()],
            $"waste from {Named.Of(worst.WasteOn.From)} to {Named.Of(worst.WasteOn.To)} {how} product on its way from "
                + $"{Named.Of(worst.ProductOn.From)} to {Named.Of(worst.ProductOn.To)} {where}, {when}",
            mend, worst.Waste.Leg.Span, worst.At) with
        { Measured = shared.Value, Figures = [shared] };
    }

    private static Crossing? Ordered(Meeting meeting, Dictionary<object, Journey> journeys)
    {
        var (a, b) = (meeting.First, meeting.Second);
        return (a.Flow.Stream, b.Flow.Stream) switch
        {
            (Stream.Waste, Stream.Product) => new Crossing(meeting, a, b, journeys[a.Leg], journeys[b.Leg]),
            (Stream.Product, Stream.Waste) => new Crossing(meeting, b, a, journeys[b.Leg], journeys[a.Leg]),
            _ => null,
        };
    }

    private static bool IsHandOver(Crossing c)
    {
        if (IsOffTheFloor(c.Waste) || IsOffTheFloor(c.Product))
        {
            return true;
        }

        return c.SharedMm <= HandOverMm
            && new[] { c.Waste.Leg.From, c.Waste.Leg.To }.OfType<StationStop>().Any(s =>
                new[] { c.Product.Leg.From, c.Product.Leg.To }.OfType<StationStop>().Any(p => p.Station.Id == s.Station.Id)
                && s.Station.Footprint.Distance(Shape.Factory.CreatePoint(c.At)) <= HandOverMm);
    }

    // In the open air ways are not drawn; only a door that both go through counts.
    private static bool IsInTheYard(IReadOnlyList<Room> rooms, Crossing c) => !Shared(c).Any() && RoomAt(rooms, c.At) is null;

    // Raw product walked over later soils no more than the dirty room itself does.
    private static bool MattersLater(IReadOnlyList<Room> rooms, Crossing c)
        => Shared(c).Any() || RoomAt(rooms, c.At)?.Class is HygieneClass.Clean or HygieneClass.Cold;

    private static bool IsOffTheFloor(LegRoute leg) => leg.Leg.Carriage.Kind is CarriageKind.Pump or CarriageKind.Chute;

    // Floor shared on both sides of a shared doorway is the same mistake as the doorway.
    private static string PlaceOf(IReadOnlyList<Room> rooms, Crossing crossing)
        => Shared(crossing).FirstOrDefault()?.Id ?? RoomAt(rooms, crossing.At)?.Id ?? "";

    private static IEnumerable<Opening> Shared(Crossing c)
        => c.Waste.Route is null || c.Product.Route is null
            ? []
            : c.Waste.Route.Openings.IntersectBy(c.Product.Route.Openings.Select(o => o.Id), o => o.Id);

    private static Room? RoomAt(IReadOnlyList<Room> rooms, Coordinate at)
        => rooms.FirstOrDefault(r => r.Floor.Covers(Shape.Factory.CreatePoint(at)));

    private sealed record Crossing(Meeting Meeting, LegRoute Waste, LegRoute Product, Journey WasteOn, Journey ProductOn)
    {
        public Coordinate At => Meeting.At;

        public double SharedMm => Meeting.SharedMm;

        public bool SameTime => Waste.Leg.Period == Product.Leg.Period;
    }
}
