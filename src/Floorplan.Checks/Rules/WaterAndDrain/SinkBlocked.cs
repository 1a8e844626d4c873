using Floorplan.Checks.Framework;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Flows;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>Whether a person can stand near enough to a sink to use it.</summary>
public sealed class SinkBlocked : Rule
{
    public override string Name => "sink-blocked";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "Nobody can stand at a sink: something else stands in front of it.";

    public override string Why => "A sink behind a tank or a bin is not used. It has to be free at all times, and for nothing but washing hands.";

    public override string Mend => "Move what stands in front of it, or put the sink where there is floor to stand on.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("Food Code 2022, 5-205.11 (WAC 246-215-05270): a hand sink can be got at at all times", Origin.FoundInPublicCopy, Force.Law),
        new("half a standing place and a short bend from the bowl", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<RuleLimit> Limits => [new("sink to the nearest place to stand", 450, LimitUnit.Millimetres, Sources[1], Severity.Warning)];

    public override string Bad => Box("1800 from west, 900 from south");

    public override string Good => Box("against south wall, 3200 from west");

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var sink in context.Plan.Stations.Where(s => s.Role == StationRole.Sink))
        {
            var stand = context.Space.StandingAt(new StationStop(sink, sink.Span), sink.Room);
            double far = stand is null ? double.PositiveInfinity : sink.Footprint.Distance(Shape.Factory.CreatePoint(stand));
            if (far <= limit.Value + Tiers.Tolerance)
            {
                continue;
            }

            var near = sink.Footprint.EnvelopeInternal.Copy();
            near.ExpandBy(limit.Value);
            string[] others = [.. context.Space.StationsNear(near).Where(s => s.Id != sink.Id && s.Room.Id == sink.Room.Id).Select(Named.Of)];
            string behind = others.Length == 0 ? "" : " behind " + Named.List(others);
            string where = stand is null ? "there is no floor to stand on" : $"the nearest floor to stand on is {context.Text(far)} away";
            yield return CheckContext.Find(
                this, limit, far, [sink.Id], $"nobody can get at the sink {sink.Id}{behind}: {where}",
                others.Length == 0 ? $"move {sink.Id} to where there is floor to stand on" : $"move {Named.List(others)} away from {sink.Id}, or move {sink.Id}", sink.Span, sink.Bounds.Centre.Coordinate)
                with
            { Severity = Severity.Error };
        }
    }

    private static string Box(string tank) => $"""
        plan "Sink and tank"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 110
          doors west
        room gut "Gutting" dirty from west to east
        door d1 gut to outside, south wall, 400 from west, 900 x 2050, swings out
        sink s1 hand in gut, 400 x 350, against north wall, 2200 from west
        station tank "Rinse tank" in gut
          size 1200 x 900 x 1000
          place {tank}
        """;
}
