using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>
/// Whether a person can stand near enough in front of a sink, facing it, to use it. A sink against a wall is not used from its ends.
/// </summary>
internal sealed class SinkBlocked : Rule
{
    /// <summary>A wall as near as this is the one that the sink hangs on, in mm; own assumption.</summary>
    private const double Behind = 100;

    public override string Name => "sink-blocked";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says => "Nobody can stand at a sink: something else, or a wall, takes the floor in front of it.";

    public override string Why
        => "A sink behind a tank or a bin is not used. It has to be free at all times, and for nothing but washing hands.";

    public override string Mend => "Move what stands in front of it, or put the sink where there is floor to stand on.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "Food Code 2022, 5-205.11 (WAC 246-215-05270): a hand sink can be got at at all times", Origin.FoundInPublicCopy,
            Force.ModelCode).In("us").Of(PlantOf.Retail),
        new("half a standing place and a short bend from the bowl", Origin.OwnAssumption),
        Published.AnsurTwo,
    ];

    public override IReadOnlyList<RuleLimit> Limits
        => [new("sink to the nearest place to stand", 450, LimitUnit.Millimetres, Sources[1], Severity.Warning)];

    public override string Bad => """
        plan "Sink and tank"
          units metric
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 110
          doors west
        room gut "Gutting" dirty from west to east
        door d1 gut to outside, south wall, 400 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in gut, 4500 from west, centred, 100
        sink s1 hand in gut, 400 x 350, against north wall, 2200 from west
        station tank "Rinse tank" in gut
          size 1200 x 900 x 1000
          place 1800 from west, 900 from south
        """;

    public override IReadOnlyList<LineChange> Mended => [new("place 1800", "  place against south wall, 3200 from west")];

    public override IReadOnlyList<Cause> FollowsFrom
        => [.. Cause.AtSameThings("clear-space-blocked", "overlap"), .. Cause.Misplaced("outside-shell", "overlap")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var sink in context.Plan.Stations.Where(s => s.Role == StationRole.Sink))
        {
            var fronts = Fronts(sink).Select(side => new StandingBefore(context.Space, sink, side)).ToList();
            double near = fronts.Min(f => f.Nearest());
            if (near > limit.Value + Tiers.Tolerance)
            {
                yield return Report(context, sink, fronts, near, limit);
            }
        }
    }

    private Finding Report(CheckContext context, Station sink, List<StandingBefore> fronts, double near, AppliedLimit limit)
    {
        var blockers =
            fronts.SelectMany(f => context.Space.StationsNear(f.Ideal.EnvelopeInternal)
                .Where(s => Touch.Shared(f.Ideal, s.Footprint) is not null))
            .Where(s => s.Id != sink.Id && InTheWay.Is(s))
            .DistinctBy(s => s.Id)
            .OrderBy(s => s.Item)
            .ToList();
        string name = Named.Of(sink);
        string others = Named.List(blockers.Select(Named.Of));
        string what = blockers.Count switch
        {
            0 => "a wall is too near",
            1 => $"{others} stands in front of it",
            _ => $"{others} stand in front of it",
        };
        string where = double.IsInfinity(near)
            ? "there is no floor to stand on before it"
            : $"the nearest place to stand before it is {context.Text(near)} away";
        string room = context.Text(WorkerSize.Depth);
        return CheckContext.Find(
            this, limit, near, [sink.Id, .. blockers.Select(s => s.Id)], $"nobody can get at the sink {name}: {what}, and {where}",
            blockers.Count == 0
                ? $"move {name} to where there is floor to stand on"
                : $"move {others} away so that {room} of floor is free before {name}, or move {name}",
            sink.Span, sink.Bounds.Centre.Coordinate)
            with
        { Severity = Severity.Error };
    }

    /// <summary>Where people are said to stand, else the sides that face away from a wall behind, else all.</summary>
    private static IReadOnlyList<Side> Fronts(Station sink)
    {
        Side[] said = [.. sink.Workers.Select(w => w.Stands).Concat(sink.Clears.Select(c => c.Side)).Distinct()];
        Side[] faced = said.Length > 0 ? said : [.. Compass.All.Where(side => IsAtWall(sink, side.Opposite()))];
        return faced.Length > 0 ? faced : Compass.All;
    }

    private static bool IsAtWall(Station sink, Side side)
    {
        var box = sink.Footprint.EnvelopeInternal;
        var behind = side switch
        {
            Side.North => new Coordinate(box.Centre.X, box.MaxY + Behind),
            Side.South => new Coordinate(box.Centre.X, box.MinY - Behind),
            Side.East => new Coordinate(box.MaxX + Behind, box.Centre.Y),
            _ => new Coordinate(box.MinX - Behind, box.Centre.Y),
        };
        return !sink.Room.Floor.Covers(Shape.Factory.CreatePoint(behind));
    }
}
