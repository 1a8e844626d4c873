using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>The real walk from each working place with open product to the nearest hand sink.</summary>
public sealed class HandSinkTooFar : Rule
{
    public override string Name => "hand-sink-too-far";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "The walk from a worker's place to the nearest hand sink is too long, or there is none.";

    public override string Why => "Hands are washed as often as the sink is near. Behind a door or a tank it is not used. South African poultry law asks for a basin within 3 m.";

    public override string Mend => "Add a hand sink near the station, or clear the way to the one there is.";

    public override IReadOnlyList<Source> Sources { get; } = [Published.PlanReviewSinks, Published.SouthAfricanPoultry];

    public override IReadOnlyList<RuleLimit> Limits => [new("walk from station to hand sink", 7620, LimitUnit.Millimetres, Sources[0], Severity.Warning)];

    public override string Bad => Shed("sink s1 hand in cut, 400 x 350, against east wall, 300 from south");

    public override string Good => Shed("sink s1 hand in cut, 400 x 350, against west wall, 300 from south");

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } limit)
        {
            yield break;
        }

        var sinks = context.Plan.Stations.Where(s => s.IsHandSink)
            .Select(s => (Sink: s, At: context.Space.StandingAt(new StationStop(s, s.Span), s.Room)))
            .Where(s => s.At is not null)
            .Select(s => (s.Sink, At: s.At!))
            .ToList();
        if (sinks.Count == 0)
        {
            yield break;
        }

        foreach (var station in context.Plan.Stations.Where(s => s.Role == StationRole.Station && s.Room.Class is HygieneClass.Dirty or HygieneClass.Clean && s.Workers.Count > 0))
        {
            var worker = station.Workers[0];
            var (walk, sink) = Nearest(context, station, worker.Centre.Coordinate, sinks);
            if (walk <= limit.Value + Tiers.Tolerance)
            {
                continue;
            }

            string way = sink is null ? "no walk leads" : $"the walk is {context.Walk(walk)}";
            yield return CheckContext.Find(
                this, limit, walk, [station.Id, .. sink is null ? Array.Empty<string>() : [sink.Id]], $"{way} from {Named.Of(station)} to {(sink is null ? "a hand sink" : "the nearest hand sink, " + sink.Id)}",
                sink is null ? $"add a hand sink in {Named.Of(station.Room)}" : $"move {sink.Id} nearer by {context.Walk(walk - limit.Value)}, or add a hand sink in {Named.Of(station.Room)}", station.Span, worker.Centre.Coordinate);
        }
    }

    private static (double Walk, Station? Sink) Nearest(CheckContext context, Station station, Coordinate from, List<(Station Sink, Coordinate At)> sinks)
    {
        (double Walk, Station? Sink) best = (double.PositiveInfinity, null);
        foreach (var (sink, at) in sinks.OrderBy(s => s.At.Distance(from)))
        {
            if (at.Distance(from) >= best.Walk)
            {
                break;
            }

            if (context.Space.Find(station.Room, from, sink.Room, at, Mover.Person) is { } route && route.LengthMm < best.Walk)
            {
                best = (route.LengthMm, sink);
            }
        }

        return best;
    }

    private static string Shed(string sink) => $"""
        plan "A long cutting shed"
          units metric
          code us
        shell shed 12000 x 4000 x 2800
          lining walls 20, ceiling 20, floor 120
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, centred, 900 x 2050, swings out
        station bench "Cutting bench" in cut
          size 1800 x 700 x 900
          place against north wall, 500 from west
          worker south
        {sink}
        """;
}
