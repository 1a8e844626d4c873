using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>The real walk from each working place with open product to the nearest hand sink.</summary>
internal sealed class HandSinkTooFar : Rule
{
    /// <summary>How far the first look for sinks goes, in mm; changes only how fast one is found.</summary>
    private const double FirstRing = 4000;

    public override string Name => "hand-sink-too-far";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "The walk from a worker's place to the nearest hand sink is too long, or no walk leads to one.";

    public override string Why
        => "Hands are washed as often as the sink is near. Behind a door or a tank it is not used. South African law on abattoirs asks for "
            + "a basin within 3 m; other laws give no distance.";

    public override string Mend => "Add a hand sink near the station, or clear the way to the one there is.";

    public override IReadOnlyList<Source> Sources { get; } = [Published.PlanReviewSinks, Published.SouthAfricanBasins];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new("walk from station to hand sink", 7620, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new("walk from station to hand sink", 3000, LimitUnit.Millimetres, Sources[1], Severity.Warning) { Quoted = true },
    ];

    public override string Bad => """
        plan "A long cutting shed"
          units metric
          code us
          plant retail
        shell shed 12000 x 4000 x 2800
          lining walls 20, ceiling 20, floor 120
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, centred, 900 x 2050, swings out, closes itself
        drain fd1 floor in cut, 3000 from west, centred, 100
        drain fd2 floor in cut, 9000 from west, centred, 100
        station bench "Cutting bench" in cut
          size 1800 x 600 x 900
          place against north wall, 500 from west
          worker south
        sink s1 hand in cut, 400 x 350, against east wall, 300 from south
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("sink s1", "sink s1 hand in cut, 400 x 350, against west wall, 300 from south"),
    ];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.AtSameThings("nowhere-to-stand"), .. Cause.Misplaced("outside-shell")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var sinks = new STRtree<(Station Sink, Coordinate At)>();
        foreach (var sink in context.Plan.Stations.Where(s => s.IsHandSink))
        {
            if (context.Space.StandingAt(new StationStop(sink, sink.Span), sink.Room) is { } at)
            {
                sinks.Insert(new Envelope(at), (sink, at));
            }
        }

        // A plan without any hand sink is the business of hand-sink-missing.
        if (sinks.Count == 0)
        {
            yield break;
        }

        foreach (var station in context.Plan.Stations.Where(HandlesOpenProduct))
        {
            var worst = station.Workers
                .Select(w => (Worker: w, Nearest: Nearest(context, station, w.Centre.Coordinate, sinks)))
                .MaxBy(p => p.Nearest.Walk);
            if (worst.Nearest.Sink is null)
            {
                // Whatever distance holds, a sink that nobody can walk to is none.
                yield return NoWay(context, station, worst.Worker.Centre.Coordinate);
            }
            else if (Tiers.Above(context, this, worst.Nearest.Walk) is { } limit)
            {
                yield return Report(context, station, worst.Worker.Centre.Coordinate, worst.Nearest.Walk, worst.Nearest.Sink, limit);
            }
        }
    }

    private Finding NoWay(CheckContext context, Station station, Coordinate at) => CheckContext.Find(
        this, Severity.Warning, [station.Id], $"no walk leads from {Named.Of(station)} to a hand sink",
        $"add a hand sink in {Named.Of(station.Room)}, or clear the way to the one there is", station.Span, at) with
    { Limit = $"a hand sink that people can get to ({PlanSources.For(context.Plan.Head, Published.HandSinks).Text})" };

    private Finding Report(CheckContext context, Station station, Coordinate at, double walk, Station sink, AppliedLimit limit)
        => CheckContext.Find(
            this, limit, walk, [station.Id, sink.Id],
            $"the walk is {context.Walk(walk)} from {Named.Of(station)} to the nearest hand sink, {sink.Id}",
            $"move {sink.Id} nearer by {context.Walk(walk - limit.Value)}, or add a hand sink in {Named.Of(station.Room)}",
            station.Span, at);

    private static bool HandlesOpenProduct(Station station) =>
        station.Role == StationRole.Station && station.Room.Class is HygieneClass.Dirty or HygieneClass.Clean && station.Workers.Count > 0;

    /// <summary>Looks in rings that double, since a walk is never shorter than the straight way.</summary>
    private static (double Walk, Station? Sink) Nearest(
        CheckContext context, Station station, Coordinate from, STRtree<(Station Sink, Coordinate At)> sinks)
    {
        (double Walk, Station? Sink) best = (double.PositiveInfinity, null);
        var tried = new HashSet<string>();
        var all = context.Plan.Shell.Outside.EnvelopeInternal;
        double most = all.Width + all.Height;
        for (double ring = FirstRing; ; ring *= 2)
        {
            var box = new Envelope(from);
            box.ExpandBy(ring);
            foreach (var (sink, at) in sinks.Query(box).Where(s => s.At.Distance(from) <= ring && tried.Add(s.Sink.Id))
                .OrderBy(s => s.At.Distance(from)))
            {
                if (at.Distance(from) < best.Walk
                    && context.Space.Find(station.Room, from, sink.Room, at, Mover.Person) is { } route
                    && route.LengthMm < best.Walk)
                {
                    best = (route.LengthMm, sink);
                }
            }

            if (best.Walk <= ring || ring > most)
            {
                return best;
            }
        }
    }
}
