using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Checks.Rules.Hands;

/// <summary>The hooks of overhead rails against the ceiling, the floor, and the hands that hang product on them.</summary>
internal sealed class RailHeight : Rule
{
    private const string Highest = "greatest height of hooks that hands hang on";
    private const string Lowest = "least height of hooks";

    /// <summary>48 in.</summary>
    private const double AboveFloor = 1219.2;

    /// <summary>6 ft 6 in.</summary>
    private const double OfSheep = 1981.2;

    /// <summary>The heaviest load of the revised NIOSH lifting equation, 23 kg: more is hoisted, not hung by hand.</summary>
    private const double HungByHand = 23;

    /// <summary>Rails farther off than this are not hung on from a place.</summary>
    private static readonly BodySize AtHand = BodySize.Largest(BodyMeasure.ThumbTipReach);

    public override string Name => "rail-height";

    public override RuleGroup Group => RuleGroup.Hands;

    public override string Says
        => "The hooks of an overhead rail are above the ceiling, too low over the floor, or too high for the hands that hang product on "
            + "them.";

    public override string Why
        => "What hangs low drags over the floor. Hooks above fingertips mean throwing, or a crate to stand on that slides on a wet floor.";

    public override string Mend => "Change the height of the rail, let it dip where product is hung on, or give people a platform there.";

    public override string? Caution => "A loaded rail needs a frame that an engineer has sized; heavy pieces want a hoist.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(Published.AnsurTwo.Title + ": overhead reach standing, worked out from its reach sitting", Origin.FoundInPublicCopy,
            Force.Measured),
        new Source(
            "FSIS Guidebook for facilities 1997, chapter 10, Table 8: shackles of a reinspection station for poultry 48 in or more "
                + "above the "
                + "floor", Origin.FoundInSecondaryCopy, Force.Guidance).In("us").For(Trade.Poultry),
        new Source(
            "FSIS Guidebook for facilities 1997, chapter 9, table 4: cooler rails for sheep 7 ft 6 in, trolleys take 1 ft of it",
            Origin.FoundInSecondaryCopy, Force.Guidance).In("us").For(Trade.RedMeat),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        RuleLimit.OfBody(Highest, BodySize.Smallest(BodyMeasure.FingertipsUp), Sources[0], Severity.Note),
        new(Lowest, AboveFloor, LimitUnit.Millimetres, Sources[1], Severity.Note),
        new(Lowest, OfSheep, LimitUnit.Millimetres, Sources[2], Severity.Note),
    ];

    public override string Bad => """
        plan "Hanging room"
          units metric
          product ducks, 2.5 kg each
        shell shed 6000 x 3000 x 2600
        room hang "Hanging" dirty from west to east
        door d1 hang to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        drain fd1 floor in hang, 3000 from west, centred, 100
        sink s1 hand in hang, 400 x 350, against south wall, 2500 from west
        station table "Hanging table" in hang
          size   2000 x 600 x 900
          place  against north wall, 600 from west
          worker south
        station pluck "Plucker" in hang
          size   800 x 600 x 1200
          place  against north wall, east of table gap 100
          worker south
        rail r1 "Bird rail" in hang
          path   700 2300, 3300 2300
          height 2200
        flow product
          outside -> d1 -> table by hand
          table -> pluck by rail
        """;

    public override IReadOnlyList<LineChange> Mended => [new("height 2200", "  height 1850")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var rails = context.Plan.Rails;
        if (rails.Count == 0)
        {
            yield break;
        }

        var rooms = new STRtree<Room>();
        foreach (var room in context.Plan.Rooms)
        {
            rooms.Insert(room.Floor.EnvelopeInternal, room);
        }

        var hands = HungByHands(context);
        foreach (var rail in rails)
        {
            if (AboveCeiling(rail, rooms) is { } under)
            {
                yield return CheckContext.Find(
                    this, Severity.Error, [rail.Id, under.Id],
                    $"the hooks of rail {rail.Id} are {context.Text(rail.Height)} above the floor, and the ceiling of {Named.Of(under)} "
                        + $"is {context.Text(under.CeilingHeight)}",
                    $"hang the hooks lower than {context.Text(under.CeilingHeight)}, with room for the rail itself", rail.Span,
                    rail.Path.Coordinate);
            }
            else if (Fault(context, rail, hands) is { } finding)
            {
                yield return finding;
            }
        }
    }

    private Finding? Fault(CheckContext context, OverheadRail rail, STRtree<(Coordinate At, Station Station)> hands)
    {
        double height = rail.Height.Millimetres;
        if (context.Limit(this, Lowest) is { } lowest && height < lowest.Value - Tiers.Tolerance)
        {
            return CheckContext.Find(
                this, lowest, height, [rail.Id],
                $"the hooks of rail {rail.Id} are {context.Text(height)} above the floor, so that product hangs near it",
                $"raise them by {Say.SizeUp(lowest.Value - height, context.Plan.Units)}", rail.Span, rail.Path.Coordinate);
        }

        return context.Limit(this, Highest) is { } highest
            && height > highest.Value + Tiers.Tolerance
            && AtRail(rail, hands, AtHand.Of(context.Plan.Head.People)) is { } station
            ? CheckContext.Find(
                this, highest, height, [rail.Id, station.Id],
                $"hands hang product on rail {rail.Id} at {Named.Of(station)}, {context.Text(height)} above the floor: too high for "
                    + "small people",
                $"let the hooks come down by {Say.SizeUp(height - highest.Value, context.Plan.Units)} there if nobody walks beneath, or "
                    + "give people a platform that high",
                rail.Span, station.Bounds.Centre.Coordinate)
            : null;
    }

    private static Room? AboveCeiling(OverheadRail rail, STRtree<Room> rooms) => rooms.Query(rail.Path.EnvelopeInternal)
        .Where(r => r.CeilingHeight <= rail.Height && r.Floor.Intersects(rail.Path))
        .OrderBy(r => r.CeilingHeight).FirstOrDefault();

    /// <summary>
    /// Where somebody stands from whose station product leaves by rail, when a piece is light enough to be hung by hand; empty when no
    /// weight is said.
    /// </summary>
    private static STRtree<(Coordinate At, Station Station)> HungByHands(CheckContext context)
    {
        var places = new STRtree<(Coordinate, Station)>();
        // A carcass is hoisted or pushed along; nobody hangs it up by hand.
        var trades = context.Plan.Head.Trades;
        bool byHand = trades.Count == 0 || trades.Any(t => t is not (Trade.RedMeat or Trade.Game));
        bool light = byHand && context.Plan.Head.Products is { Count: > 0 } products
            && products.All(p => p.WeightEach is { Unit.Kind: QuantityKind.Mass } each && each.Base <= HungByHand);
        var from = context.Plan.Flows.Where(f => light && f.Stream == Model.Flows.Stream.Product).SelectMany(f => f.Legs)
            .Where(l => l.Carriage.Kind == CarriageKind.Rail)
            .Select(l => l.From).OfType<StationStop>().Select(s => s.Station).DistinctBy(s => s.Id);
        foreach (var station in from)
        {
            foreach (var worker in station.Workers)
            {
                places.Insert(new Envelope(worker.Centre.Coordinate), (worker.Centre.Coordinate, station));
            }
        }

        return places;
    }

    /// <summary>The first station, in the order of the file, whose people have the rail at hand.</summary>
    private static Station? AtRail(OverheadRail rail, STRtree<(Coordinate At, Station Station)> hands, double atHand)
    {
        var near = rail.Path.EnvelopeInternal.Copy();
        near.ExpandBy(atHand);
        return hands.Query(near)
            .Where(h => rail.Path.Distance(Floorplan.Model.Shapes.Shape.Factory.CreatePoint(h.At)) <= atHand)
            .Select(h => h.Station).MinBy(s => s.Item);
    }
}
