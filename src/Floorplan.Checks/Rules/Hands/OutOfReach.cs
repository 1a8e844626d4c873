using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;
using Floorplan.Sizing.Water;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.Hands;

/// <summary>Measures from where people stand to what their hands use: their own bench, bins, hatches, racks, taps and hoses.</summary>
internal sealed class OutOfReach : Rule
{
    /// <summary>A lighter load goes in one hand, kg.</summary>
    private const double BothHandsFrom = 3;

    public override string Name => "out-of-reach";

    public override RuleGroup Group => RuleGroup.Hands;

    public override string Says
        => "A worker cannot reach what the work needs: the far side of the bench, a bin, a hatch, the top of a rack, or a tap or hose.";

    public override string Why =>
        "A person who stretches over a bench all day gets a bad back, and what cannot be reached is not cut, not picked up and not "
            + "cleaned. Reach "
            + "is set for the smallest of the crew, a small woman unless the plan says who works there, so that everybody can do the "
            + "job; past the reach of the tallest hardly anyone can. What is over the shoulder is measured from the shoulder up.";

    public override string Mend
        => "Make the bench shallower, let people stand on both sides, bring the bin or hatch nearer, hang it lower, or clear what stands "
            + "in front of it. Where hands go to a rack or machine lower than its top, say so with `work height`.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        Published.AnsurTwo,
        new("MIL-STD-1472G, Appendix B, 2012: functional reach of a 5th-percentile woman 677 mm", Origin.FoundInPublicCopy, Force.Standard),
        new("ISO 11228-1: loads of 3 kg and more are lifted with both hands", Origin.FromMemory, Force.Standard),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        RuleLimit.OfBody("reach of a small person", BodySize.Smallest(BodyMeasure.ThumbTipReach), Sources[0], Severity.Note),
        RuleLimit.OfBody("reach of a tall person", BodySize.Largest(BodyMeasure.ThumbTipReach), Sources[0], Severity.Warning),
        RuleLimit.OfBody(
            "reach of a small person with both hands", BodySize.Smallest(BodyMeasure.ThumbTipReach) with { BothHands = true }, Sources[0],
            Severity.Note),
        RuleLimit.OfBody(
            "reach of a tall person with both hands", BodySize.Largest(BodyMeasure.ThumbTipReach) with { BothHands = true }, Sources[0],
            Severity.Warning),
    ];

    public override string Bad => """
        plan "A bench too deep"
          units metric

        shell container 20 ft high-cube
          lining walls 60, ceiling 60, floor 40
          doors  west

        room work "Cutting room" clean from west to east

        door d1 work to outside, south wall, 300 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in work, 4000 from west, centred, 100
        sink s1 hand in work, 400 x 350, against south wall, 3400 from west

        station bench "Trim bench" in work
          size   1800 x 950 x 900
          place  against north wall, 1500 from west
          worker south
          work   30 s each
        """;

    public override IReadOnlyList<LineChange> Mended => [new("size   1800", "  size   1800 x 600 x 900")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var byId = context.Plan.Stations.ToDictionary(s => s.Id);
        var conveyed = context.Plan.Flows.SelectMany(f => f.Legs)
            .Where(l => l.Carriage.Kind != CarriageKind.Hand)
            .Select(l => (l.From.Name, l.To.Name))
            .ToHashSet();
        var deep = new HashSet<string>();
        foreach (var station in context.Plan.Stations)
        {
            if (station.Workers.Count > 0 && OwnBench(context, station) is { } finding)
            {
                deep.Add(station.Id);
                yield return finding;
            }

            foreach (var bin in FarBins(context, station, byId, conveyed))
            {
                yield return bin;
            }
        }

        foreach (var stop in FarStops(context))
        {
            yield return stop;
        }

        // A hose far behind a bench that is too deep is the same mistake.
        foreach (var tap in context.Facts.HandTaps.Where(t => !t.Over.Any(s => deep.Contains(s.Id))))
        {
            if (FarTap(context, tap) is { } finding)
            {
                yield return finding;
            }
        }
    }

    private Finding? OwnBench(CheckContext context, Station station)
    {
        // A machine that is fed below its top, at a stated work height, is reached into only at its mouth.
        if (station.WorkHeight < station.Top)
        {
            return null;
        }

        var worst = station.Workers
            .Select(w => (Worker: w, Spot: BenchDepth.FarthestWorked(station, w)))
            .Where(p => p.Spot is not null)
            .Select(p => (p.Worker, p.Spot, Reach: context.Space.Reach(station, p.Worker, p.Spot!, station.WorkHeight.Millimetres)))

            // Who has nowhere to stand has no reach: that is told by itself.
            .Where(p => double.IsFinite(p.Reach))
            .OrderByDescending(p => p.Reach)
            .FirstOrDefault();
        if (worst.Spot is null || Tiers.Above(Reaches(context, false), worst.Reach) is not { } limit)
        {
            return null;
        }

        string part = BenchDepth.IsWorkedToTheMiddle(station, worst.Worker) ? "middle" : "far side";
        string more = Say.SizeUp(worst.Reach - limit.Value, context.Plan.Units);
        return CheckContext.Find(
            this,
            limit,
            worst.Reach,
            [station.Id],
            $"the {part} of {Named.Of(station)} is {context.Text(worst.Reach)} from the worker",
            $"make {Named.Of(station)} {more} shallower, or let people stand on its other side too",
            station.Span,
            worst.Spot.Coordinate);
    }

    /// <summary>Waste that is thrown by hand should land in the bin without a step.</summary>
    private IEnumerable<Finding> FarBins(
        CheckContext context, Station station, Dictionary<string, Station> byId, HashSet<(string From, string To)> conveyed)
    {
        foreach (var waste in station.Wastes)
        {
            if (waste.BinId is null || !byId.TryGetValue(waste.BinId, out var bin) || bin.Room.Id != station.Room.Id ||
                station.Workers.Count == 0 || conveyed.Contains((station.Id, bin.Id)) || context.Limit(this) is not { } limit)
            {
                continue;
            }

            double across = station.Workers.Min(w => context.Space.Reach(station, w, bin.Footprint, bin.Top.Millimetres));
            if (ArmReach.Beyond([limit], context.Plan.Head.People, across, bin.Top.Millimetres) is { Reach: var reach })
            {
                string measured = double.IsInfinity(reach) ? "shut off" : context.Text(reach);
                string mend = double.IsInfinity(reach)
                    ? $"clear what stands between {Named.Of(bin)} and {Named.Of(station)}"
                    : ArmReach.Up(limit, context.Plan.Head.People, bin.Top.Millimetres) > 0
                    ? $"set {Named.Of(bin)} lower, its rim no higher than the shoulder of a small person"
                    : $"move {Named.Of(bin)} {Say.SizeUp(reach - limit.Value, context.Plan.Units)} nearer to {Named.Of(station)}, or "
                        + $"write how the waste gets there, such as: {station.Id} -> {bin.Id} by chute";
                yield return CheckContext.Find(
                    this, limit, reach, [station.Id, bin.Id],
                    $"{Named.Of(bin)} is {measured} from the nearest worker at {Named.Of(station)}", mend, waste.Span,
                    bin.Bounds.Centre.Coordinate);
            }
        }
    }

    /// <summary>Hatches, racks and bins that are served by hand from the floor in front of them.</summary>
    private IEnumerable<Finding> FarStops(CheckContext context)
    {
        var seen = new HashSet<(string, string)>();
        var bothHands = context.Facts.Lifts.Where(l => l.Load?.Value >= BothHandsFrom).SelectMany(l => new[] { l.From, l.To })
            .OfType<Stop>()
            .Select(s => s.Name).ToHashSet();
        foreach (var leg in context.Plan.Flows.SelectMany(f => f.Legs).Where(l => l.Carriage.Kind == CarriageKind.Hand))
        {
            foreach (var (stop, other) in new[] { (leg.From, leg.To), (leg.To, leg.From) })
            {
                var room = RoomOf(stop, other);
                if (room is not null
                    && Target(stop) is { } target
                    && seen.Add((stop.Name, room.Id))
                    && FarStop(context, stop, other, room, target, bothHands.Contains(stop.Name)) is { } finding)
                {
                    yield return finding;
                }
            }
        }
    }

    private Finding? FarStop(CheckContext context, Stop stop, Stop other, Room room, Geometry target, bool bothHands)
    {
        // Arms start at the front of the body, half a standing place ahead of its middle.
        var stand = context.Space.StandingAt(stop, room);
        double across = stand is null
            ? double.PositiveInfinity
            : Math.Max(0, target.Distance(Floorplan.Model.Shapes.Shape.Factory.CreatePoint(stand)) - (WorkerSize.Depth.Millimetres / 2));
        double? height = UsedAt(stop);
        if (other is StationStop { Station: { Workers.Count: > 0 } station })
        {
            across =
                Math.Min(
                    across, station.Workers.Min(w => context.Space.Reach(station, w, target, height ?? station.WorkHeight.Millimetres)));
        }

        var people = context.Plan.Head.People;
        if (ArmReach.Beyond(Reaches(context, bothHands), people, across, height) is not (var limit, var reach))
        {
            return null;
        }

        bool up = ArmReach.Up(limit, people, height) > 0;
        string things, mend;
        if (double.IsInfinity(reach))
        {
            things = $"there is no floor to stand on at {Named.Of(stop)} in {Named.Of(room)}";
            mend = $"clear the floor in front of {Named.Of(stop)}";
        }
        else if (up)
        {
            things =
                $"{Named.Of(stop)} is {context.Text(height!.Value)} high, {context.Text(reach)} from the shoulder of who stands nearest "
                    + $"in {Named.Of(room)}";
            mend = Lower(context, limit, across) + (stop is StationStop ? ", or say with `work height` how high hands go" : "");
        }
        else
        {
            things =
                $"{Named.Of(stop)} is {context.Text(reach)} from the nearest place to stand in "
                    + $"{Named.Of(room)}{(bothHands ? ", where a load goes in both hands" : "")}";
            mend = $"clear the floor in front of {Named.Of(stop)}, so that a person can stand "
                + $"{Say.SizeUp(reach - limit.Value, context.Plan.Units)} nearer";
        }

        return CheckContext.Find(this, limit, reach, [stop.Name], things, mend, Span(stop), target.Centroid.Coordinate);
    }

    private Finding? FarTap(CheckContext context, HandTap tap)
    {
        var people = context.Plan.Head.People;
        if (ArmReach.Beyond(Reaches(context, false), people, tap.Across, tap.Height) is not (var limit, var reach))
        {
            return null;
        }

        string what = $"{tap.Hung.Noun} {tap.Hung.Id}";
        bool up = ArmReach.Up(limit, people, tap.Height) > 0;
        return CheckContext.Find(
            this, limit, reach, [tap.Hung.Id],
            up
                ? $"{what} hangs {context.Text(tap.Height!.Value)} high, {context.Text(reach)} from the shoulder of who stands nearest"
                : $"{what} is {context.Text(reach)} from the nearest place to stand",
            up ? Lower(
                context, limit,
                tap.Across) : $"clear the floor in front of it, or move it {Say.SizeUp(reach - limit.Value, context.Plan.Units)} nearer "
                    + "to where people stand",
            tap.Hung.Span, tap.Hung.At.Coordinate);
    }

    /// <summary>The figures for one hand or for both; the plan's own figure is for either.</summary>
    private IEnumerable<AppliedLimit> Reaches(CheckContext context, bool bothHands) =>
        Tiers.Holding(context, this).Where(l => l.SetBy is not null || l.Published.Body!.BothHands == bothHands);

    private static string Lower(CheckContext context, AppliedLimit limit, double across)
        => ArmReach.Highest(limit, context.Plan.Head.People, across) is { } highest
        ? $"put it no higher than {Say.Size(Math.Floor(highest), context.Plan.Units)}"
        : "put it lower and nearer";

    /// <summary>
    /// How high hands go; null where the plan does not say. To a rack they go as high as it is, unless it says otherwise.
    /// </summary>
    private static double? UsedAt(Stop stop) => stop switch
    {
        StationStop { Station.HeightIsSaid: false } => null,
        StationStop { Station: { Role: StationRole.Store or StationRole.Bin } store } => store.WorkHeight.Millimetres,
        StationStop { Station: var station } when station.WorkHeight != station.Top => station.WorkHeight.Millimetres,
        OpeningStop { Opening: var opening } => opening.Sill.Millimetres,
        _ => null,
    };

    private static Geometry? Target(Stop stop) => stop switch
    {
        StationStop { Station: { Workers.Count: 0 } station } => station.Footprint,
        OpeningStop { Opening: { IsWalkable: false } opening } when opening.Kind != OpeningKind.CargoDoor => opening.Reveal,
        _ => null,
    };

    private static Room? RoomOf(Stop stop, Stop other) => (stop, other) switch
    {
        (StationStop own, _) => own.Station.Room,
        (OpeningStop, StationStop far) => far.Station.Room,
        _ => null,
    };

    private static SourceSpan Span(Stop stop) => stop switch
    {
        StationStop s => s.Station.Span,
        OpeningStop o => o.Opening.Span,
        _ => stop.Span,
    };
}
