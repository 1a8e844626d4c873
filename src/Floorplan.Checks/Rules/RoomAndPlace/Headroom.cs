using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Floorplan.Checks.Rules.RoomAndPlace;

internal sealed class Headroom : Rule
{
    private const string Ceiling = "finished ceiling height";
    private const string Under = "headroom under rails and hung things";
    private const string Upright = "ceiling that a tall person stands upright under";
    private const string Bump = "height that a tall person stands upright under";

    /// <summary>6 ft 8 in.</summary>
    private const double LeastOfHalf = 2032;

    /// <summary>2.00 m binds, 2.10 m is wished for.</summary>
    private const double Wished = 2100;

    /// <summary>Boots 30 mm, helmet 50 mm; own assumption.</summary>
    private static readonly BodySize TallInBoots = BodySize.Largest(BodyMeasure.Stature) with { Plus = 80 };

    public override string Name => "headroom";

    public override RuleGroup Group => RuleGroup.RoomAndPlace;

    public override string Says
        => "The finished ceiling is lower than people's way out needs, or a rail or hung thing is too low over a walk or a worker's place.";

    public override string Why
        => "Heads meet hooks, lamps and door tracks at the end of a long shift. A standard-height container loses the legal ceiling "
        + "to its linings; a high-cube keeps it. Hung things lower than a standing person count as obstacles: routes are led round them.";

    public override string Mend
        => "Use a high-cube shell, thinner linings or less floor build-up, or hang the thing higher or beside the walk.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("29 CFR 1910.36(g)(1), US CFR: exit route ceiling 7 ft 6 in", Origin.FoundInPublicCopy, Force.Law).In("us"),
        new Source(
            "29 CFR 1910.36(g)(1), US CFR: projections from an exit route ceiling 6 ft 8 in above the floor", Origin.FoundInPublicCopy,
            Force.Law).In("us"),
        new("a tall man, 1870 mm by ANSUR II, in boots and a helmet: 1950 mm", Origin.OwnAssumption, Force.Measured),
        new Source(
            "29 CFR 1910.34(a), US CFR: leaves out mobile workplaces such as vehicles; for a trailer the figures are advice",
            Origin.FromMemory, Force.Law).In("us"),
        new Source("ASR A1.8 and A2.3, Germany, 2022: ways 2.00 m high at least, 2.10 m wished for, doors 1.95 m",
            Origin.FoundInSecondaryCopy, Force.Guidance).In("de"),
        new Source("IBC 2018, 1003.3, as adopted in Minnesota: not more than half of the ceiling of a way out may be lower than 7 ft 6 in, "
            + "and that 6 ft 8 in high at least", Origin.FoundInSecondaryCopy, Force.ModelCode).In("us"),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        // 7 ft 6 in and 6 ft 8 in.
        new(Ceiling, 2286, LimitUnit.Millimetres, Sources[0], Severity.Error),
        new(Ceiling, Wished, LimitUnit.Millimetres, Sources[4], Severity.Note),
        RuleLimit.OfBody(Upright, TallInBoots, Sources[2], Severity.Warning),
        new(Under, 2032, LimitUnit.Millimetres, Sources[1], Severity.Error),
        new(Under, 2000, LimitUnit.Millimetres, Sources[4], Severity.Note),
        RuleLimit.OfBody(Bump, TallInBoots, Sources[2], Severity.Warning),
    ];

    public override string Bad => """
        plan "Clam box"
          units metric
          code us
        shell container 20 ft standard
          lining walls 50, ceiling 50, floor 50
          doors west
        room shuck "Shucking" clean from west to east
        door d1 shuck to outside, south wall, 1500 from west, 900 x 2000, swings out, closes itself
        drain fd1 floor in shuck, 1500 from west, centred, 100
        station bench "Shucking bench" in shuck
          size 1800 x 600 x 900
          place against north wall, 2500 from west
        """;

    public override IReadOnlyList<LineChange> Mended => [new("shell container", "shell container 20 ft high-cube")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var found = new List<Finding>();
        var ceiling = context.Limit(this, Ceiling);
        found.AddRange(LowCeilings(context, ceiling is { SetBy: not null } ? [ceiling] : All(ceiling, context.Limit(this, Upright))));
        var under = All(context.Limit(this, Under), context.Limit(this, Bump));
        var walks = Walks(context);
        found.AddRange(LowRails(context, under, walks));
        found.AddRange(context.Plan.Stations.Where(s => s.Hung).Select(s => LowHung(context, under, s, walks)).OfType<Finding>());

        bool adviceOnly = context.Plan.Shell.Kind == ShellKind.Trailer && context.Plan.Head.Code == CodeChoice.Us;
        return adviceOnly ? found.Select(f => f with { Severity = Severity.Note }) : found;
    }

    private static List<AppliedLimit> All(params AppliedLimit?[] limits) => [.. limits.OfType<AppliedLimit>()];

    // Rooms under one low ceiling are one mistake.
    private IEnumerable<Finding> LowCeilings(CheckContext context, IReadOnlyList<AppliedLimit> limits)
    {
        double whole = context.Plan.Rooms.Sum(r => r.Floor.Area);
        foreach (var low in context.Plan.Rooms.GroupBy(r => r.CeilingHeight))
        {
            if (Tiers.Below(limits, low.Key.Millimetres) is not { } limit)
            {
                continue;
            }

            var finding = LowCeiling(context, limit, [.. low]);
            double below = context.Plan.Rooms.Where(r => limit.Value - r.CeilingHeight.Millimetres > Touch.ToleranceMm)
                .Sum(r => r.Floor.Area);
            bool relieved = limit is { SetBy: null, Severity: Severity.Error } && low.Key.Millimetres > LeastOfHalf - Touch.ToleranceMm
                && below <= (whole / 2) + 1;
            yield return relieved
                ? finding with { Severity = Severity.Warning, Limit = $"{limit.Text}; by {Sources[5].Text}" }
                : finding;
        }
    }

    private Finding LowCeiling(CheckContext context, AppliedLimit limit, IReadOnlyList<Room> rooms)
    {
        var shell = context.Plan.Shell;
        var height = rooms[0].CeilingHeight;
        double missing = limit.Value - height.Millimetres;
        var span = height == shell.CeilingHeight ? shell.Span : rooms[0].Span;
        return CheckContext.Find(this, limit, height.Millimetres, [.. rooms.Select(r => r.Id)],
            $"the finished ceiling of {Named.List(rooms.Select(Named.Of))} is {context.Text(height)} above the floor, "
                + $"{context.Text(missing)} too low",
            $"gain {context.Text(missing)}: a higher shell, thinner ceiling lining or less floor build-up",
            span, rooms[0].Floor.InteriorPoint.Coordinate);
    }

    private IEnumerable<Finding> LowRails(CheckContext context, IReadOnlyList<AppliedLimit> limits, STRtree<LineString> walks)
    {
        foreach (var rail in context.Plan.Rails)
        {
            if (Tiers.Below(limits, rail.Height.Millimetres) is { } limit && FirstWalkUnder(walks, rail.Path) is { } at)
            {
                yield return CheckContext.Find(this, limit, rail.Height.Millimetres, [rail.Id],
                    $"people walk under the hooks of rail {rail.Id}, {context.Text(rail.Height)} above the floor",
                    $"raise the rail by {context.Text(limit.Value - rail.Height.Millimetres)} where people cross, or lead the walk round "
                        + "its end",
                    rail.Span, at);
            }
        }
    }

    private Finding? LowHung(CheckContext context, IReadOnlyList<AppliedLimit> limits, Station hung, STRtree<LineString> walks)
    {
        double bottom = hung.Bottom.Millimetres;
        if (Tiers.Below(limits, bottom) is not { } limit)
        {
            return null;
        }

        var near = hung.Footprint.EnvelopeInternal.Copy();
        near.ExpandBy(WorkerSize.Depth.Millimetres);
        var standing = context.Space.StationsNear(near).SelectMany(s => s.Workers)
            .FirstOrDefault(w => Touch.Shared(w.Floor, hung.Footprint) is not null);
        var at = standing?.Centre.Coordinate ?? FirstWalkUnder(walks, OverFreeFloor(context, hung));
        return at is null
            ? null
            : CheckContext.Find(this, limit, bottom, [hung.Id],
                $"{Named.Of(hung)} hangs {context.Text(hung.Bottom)} above the floor where people {(standing is null ? "walk" : "stand")}",
                $"hang it {context.Text(limit.Value - bottom)} higher, or over something that stands on the floor",
                hung.Span, at);
    }

    /// <summary>What hangs over a tank or bench is reached into there, and nobody walks.</summary>
    private static Geometry OverFreeFloor(CheckContext context, Station hung)
        => context.Space.StationsNear(hung.Footprint.EnvelopeInternal).Where(s => !s.Hung && !s.Movable)
            .Aggregate((Geometry)hung.Footprint, (free, s) => Overlays.Less(free, s.Footprint));

    private static STRtree<LineString> Walks(CheckContext context)
    {
        var walks = new STRtree<LineString>();
        foreach (var leg in context.Space.LegRoutes)
        {
            if (leg.Route is { } route && leg.Leg.Carriage.Kind is CarriageKind.Walk or CarriageKind.Hand or CarriageKind.Trolley)
            {
                walks.Insert(route.Path.EnvelopeInternal, route.Path);
            }
        }

        return walks;
    }

    private static Coordinate? FirstWalkUnder(STRtree<LineString> walks, Geometry overhead)
        => walks.Query(overhead.EnvelopeInternal)
            .Select(w => Overlays.Meeting(w, overhead))
            .FirstOrDefault(c => c is not null);
}
