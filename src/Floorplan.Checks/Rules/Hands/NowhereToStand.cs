using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Checks.Rules.Hands;

/// <summary>Looks for anything fixed, any wall and any other person on the floor of each standing place.</summary>
internal sealed class NowhereToStand : Rule
{
    public override string Name => "nowhere-to-stand";

    public override RuleGroup Group => RuleGroup.Hands;

    public override string Says => "A worker's place lies on something fixed, in a wall or on another worker's place.";

    public override string Why =>
        "A bench is only a work place when somebody can stand at it. A tank or a wall behind the worker means that the place will not be "
            + "used, or that the person works twisted.";

    public override string Mend => "Move the station or the thing behind it, or let the worker stand on another side.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        Published.AnsurTwo,
        new("Standing place 667 mm wide and 450 mm deep: forearm breadth of a 95th-percentile man, and belly depth 320 mm with room for "
            + "feet; depth is an own assumption", Origin.OwnAssumption),
    ];

    public override string Bad => """
        plan "A tank behind the worker"
          units metric

        shell container 20 ft high-cube
          lining walls 60, ceiling 60, floor 40
          doors  west

        room work "Cutting room" clean from west to east

        door d1 work to outside, south wall, 300 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in work, 4500 from west, centred, 100
        sink s1 hand in work, 400 x 350, against south wall, 3600 from west

        station bench "Trim bench" in work
          size   1400 x 600 x 900
          place  against north wall, 1500 from west
          worker south

        station tank "Chill tank" in work
          size   1200 x 1400 x 850
          place  against south wall, 1600 from west
        """;

    public override IReadOnlyList<LineChange> Mended => [new("size   1200", "  size   1200 x 600 x 850")];

    /// <summary>A worker who would stand on a sink that is blocked by the worker's own station: one mistake, told by the sink.</summary>
    public override IReadOnlyList<Cause> FollowsFrom
        => [.. Cause.AtSameThings("sink-blocked"), .. Cause.Misplaced("outside-shell", "overlap")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var places = new STRtree<(Station Station, WorkerPlace Worker)>();
        foreach (var station in context.Plan.Stations)
        {
            foreach (var worker in station.Workers)
            {
                places.Insert(worker.Floor.EnvelopeInternal, (station, worker));
            }
        }

        foreach (var station in context.Plan.Stations)
        {
            foreach (var worker in station.Workers)
            {
                var body = new Body(station, worker);
                var worst = Blockers(context, station, worker, places).OrderByDescending(b => b.Part.Area).FirstOrDefault();
                if (worst is not null)
                {
                    yield return Report(context, station, worker, body, worst);
                }
            }
        }
    }

    private Finding Report(CheckContext context, Station station, WorkerPlace worker, Body body, Blocker worst)
    {
        var units = context.Plan.Units;
        var (behind, side) = body.Cut(worst.Part);
        string who = station.Workers.Count == 1
            ? $"the worker at {Named.Of(station)}"
            : FormattableString.Invariant($"worker {worker.Number} at {Named.Of(station)}");
        bool noRoom = !worst.IsPerson && Overlays.Common(body.Least, worst.Whole).Area > SmallArea;
        double by = Math.Min(behind, side);
        string mend = worst.Thing is null
            ? $"move {Named.Of(station)} {Say.SizeUp(by, units)} away from the wall that cuts the place, or let the worker stand on "
                + "another side"
            : $"move {Named.Of(worst.Thing)} {Say.SizeUp(behind, units)} {body.Backwards} or {Say.SizeUp(side, units)} sideways, or let "
                + $"the worker stand on another side of {Named.Of(station)}";
        return CheckContext.Find(
            this,
            noRoom ? Severity.Error : Severity.Warning,
            worst.Thing is null ? [station.Id] : [station.Id, worst.Thing.Id],
            $"{who} has {(noRoom ? "nowhere to stand" : "too little floor to stand on")}: {worst.Name} cuts {Say.Size(by, units)} into "
                + "the place",
            mend,
            station.Span,
            worker.Centre.Coordinate) with
        {
            Limit = $"a place is {context.Text(WorkerSize.Width)} wide and {context.Text(WorkerSize.Depth)} deep ({Sources[0].Text}; "
                + "depth: own assumption)",
        };
    }

    /// <summary>Overlaps smaller than this are roundings of the geometry, in square mm (1 mm along a place).</summary>
    private const double SmallArea = 700;

    private static IEnumerable<Blocker> Blockers(
        CheckContext context, Station station, WorkerPlace worker, STRtree<(Station Station, WorkerPlace Worker)> places)
    {
        var floor = worker.Floor;
        if (!station.Room.Floor.Contains(floor) && Overlays.Less(floor, station.Room.Floor) is { Area: > SmallArea } beyond)
        {
            yield return new Blocker(null, "a wall", beyond, beyond, false);
        }

        foreach (var other in context.Space.StationsNear(floor.EnvelopeInternal))
        {
            if (other.Id != station.Id && InTheWay.Is(other) && Overlays.Common(floor, other.Footprint) is { Area: > SmallArea } part)
            {
                yield return new Blocker(other, Named.Of(other), part, other.Footprint, false);
            }
        }

        foreach (var (other, second) in places.Query(floor.EnvelopeInternal))
        {
            // People who face the same way side by side are the business of elbow-room; each pair is told once.
            bool pair = other.Item < station.Item && second.Stands != worker.Stands;
            if (pair && Overlays.Common(floor, second.Floor) is { Area: > SmallArea } part)
            {
                yield return new Blocker(other, $"the worker at {Named.Of(other)}", part, second.Floor, true);
            }
        }
    }

    private sealed record Blocker(Station? Thing, string Name, Geometry Part, Geometry Whole, bool IsPerson);
}
