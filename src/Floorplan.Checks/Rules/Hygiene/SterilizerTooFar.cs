using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class SterilizerTooFar : Rule
{
    public override string Name => "sterilizer-too-far";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "A station that `needs sterilizer`, because knives are used there, has none in its room, or the nearest `sink … sterilizer` "
            + "is too far. Measured straight from edge to edge.";

    public override string Why
        => "A knife carries what it cut last. It is dipped between two carcasses only where the hot water stands within a step or two.";

    public override string Mend => "Set a sterilizer of 82 °C (180 °F) beside the hand sink of the station.";

    public override string? Caution
        => "Water of 82 °C (180 °F) scalds. A licensed plumber and electrician do the work; local codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        Published.SouthAfricanSterilizers,
        Published.EuropeanSterilizers,
        new("what the plan itself asks for: `needs sterilizer`", Origin.CommonPractice),
    ];

    public override IReadOnlyList<RuleLimit> Limits
        => [new("from station to sterilizer", 3000, LimitUnit.Millimetres, Sources[0], Severity.Warning) { Quoted = true }];

    public override string Bad => """
        plan "Pheasant unit"
          units metric
          country za
          trade poultry
        shell shed 9000 x 3000 x 2500
        room draw "Drawing" clean from west to east
        door d1 draw to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in draw, 4500 from west, centred, 100
        sink s1 hand in draw, 400 x 350, against south wall, 1800 from west
        station bench "Drawing bench" in draw
          size 1200 x 600 x 900
          place against north wall, 100 from west
          worker south
          needs sterilizer
        sink z1 sterilizer in draw, 300 x 300, against north wall, 4500 from west
          needs power 230 V 0.6 kW
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("sink z1", "sink z1 sterilizer in draw, 300 x 300, against north wall, 2200 from west"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var byRoom = new Dictionary<string, STRtree<Geometry>>(StringComparer.Ordinal);
        foreach (var sink in context.Plan.Stations.Where(s => s.IsSterilizer))
        {
            if (!byRoom.TryGetValue(sink.Room.Id, out var tree))
            {
                byRoom[sink.Room.Id] = tree = new STRtree<Geometry>();
            }

            var shape = sink.Footprint.Copy();
            shape.UserData = sink;
            tree.Insert(shape.EnvelopeInternal, shape);
        }

        foreach (var station in context.Plan.Stations.Where(s => !s.IsSterilizer && s.Needs.Any(n => n.Kind == NeedKind.Sterilizer)))
        {
            if (Check(context, station, byRoom.GetValueOrDefault(station.Room.Id)) is { } finding)
            {
                yield return finding;
            }
        }
    }

    private Finding? Check(CheckContext context, Station station, STRtree<Geometry>? sterilizers)
    {
        var span = station.Needs.First(n => n.Kind == NeedKind.Sterilizer).Span;
        if (sterilizers is null)
        {
            return CheckContext.Find(
                this, Severity.Warning, [station.Id], $"{Named.Of(station)} needs a sterilizer, and {Named.Of(station.Room)} has none",
                $"add a `sink … sterilizer in {station.Room.Id}` beside it", span, station.Bounds.Centre.Coordinate) with
            { Limit = $"a sterilizer ({context.SourceOf(this).Text})" };
        }

        var nearest = sterilizers.NearestNeighbour(station.Footprint.EnvelopeInternal, station.Footprint, new GeometryItemDistance());
        double far = station.Footprint.Distance(nearest);
        var sink = (Station)nearest.UserData;
        return Tiers.Above(context, this, far) is { } limit
            ? CheckContext.Find(
                this, limit, far, [station.Id, sink.Id],
                $"the nearest sterilizer, {sink.Id}, is {context.Walk(far)} from {Named.Of(station)}",
                $"move {sink.Id} {Say.SizeUp(far - limit.Value, context.Plan.Units)} nearer, or add a sterilizer", span,
                station.Bounds.Centre.Coordinate)
            : null;
    }
}
