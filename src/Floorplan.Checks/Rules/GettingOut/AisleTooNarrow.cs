using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Flows;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>
/// The narrowest free width along every real walk, and along the way out from every working place. One pinch is told once.
/// </summary>
internal sealed class AisleTooNarrow : Rule
{
    private const string Aisle = "free width of an aisle";
    private const string Least = "width that a person passes through";
    private const string Main = "width of a way out, as advised";
    private const string WayOut = "least width anywhere on a way out";

    /// <summary>Nobody walks through less: there something is handed over a slit. Own assumption, mm.</summary>
    private const double Slit = 200;

    /// <summary>Walks that are pinched at the same place share one finding; own assumption.</summary>
    private const double SamePinch = 600;

    public override string Name => "aisle-too-narrow";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says => "People walk, or get out, between fixed things that stand too close together.";

    public override string Why
        => "In a narrow place two people cannot pass, a crate is carried sideways, and in smoke or after a fall nobody gets through with "
            + "another person.";

    public override string Mend => "Move or shorten one of the two things, or take shallower ones.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source("FDA/CFP Food Establishment Plan Review Guide 2000, Part 6: 36 in between work units", Origin.FoundInPublicCopy,
            Force.Guidance).In("us").Of(PlantOf.Retail),
        new Source("29 CFR 1910.36(g)(2), US CFR: exit access at least 28 in wide at all points", Origin.FoundInPublicCopy, Force.Law)
            .In("us"),
        new("shoulders of a large man, 567 mm by ANSUR II, in working clothes: 600 mm", Origin.OwnAssumption, Force.Measured),
        new Source(
            "29 CFR 1910.34(a), US CFR: leaves out mobile workplaces such as vehicles; for a trailer the figures are advice",
            Origin.FromMemory, Force.Law).In("us"),
        new Source("ASR A1.8, Germany, 2022, table 2: 0.60 m to one's own workplace", Origin.FoundInSecondaryCopy, Force.Guidance).In("de"),
        new Source("ASR A2.3, Germany, 2022: ways out 0.90 m wide for at most 5 people, 1.00 m for 20, 1.20 m for 200",
            Origin.FoundInSecondaryCopy, Force.Guidance).In("de"),
        new Source("fire safety risk assessment guide, UK, offices and shops: ways out 750 mm wide", Origin.FoundInSecondaryCopy,
            Force.Guidance).In("uk"),
        new Source("29 CFR 1910.22 and 21 CFR 117.20(b)(4), US CFR: aisles wide enough to work in, no number", Origin.FromMemory, Force.Law)
            .In("us").Of(PlantOf.Food),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Aisle, 914.4, LimitUnit.Millimetres, Sources[0], Severity.Note),
        new(Aisle, 600, LimitUnit.Millimetres, Sources[4], Severity.Note),
        new(Least, 600, LimitUnit.Millimetres, Sources[2], Severity.Warning),
        new(WayOut, 711.2, LimitUnit.Millimetres, Sources[1], Severity.Error),
        new(Main, 900, LimitUnit.Millimetres, Sources[5], Severity.Note),
        new(Main, 750, LimitUnit.Millimetres, Sources[6], Severity.Note),
    ];

    public override string Bad => """
        plan "Two rows"
          units metric
          code us
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors west
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 400 from west, 900 x 2050, swings out, closes itself
        drain fd1 floor in cut, 1700 from west, centred, 100
        sink s1 hand in cut, 400 x 350, against north wall, 1000 from west
        station tank "Brine tank" in cut
          size 1400 x 1000 x 900
          place against north wall, 2000 from west
        station table "Cutting table" in cut
          size 1400 x 650 x 900
          place against south wall, 2000 from west
        station pack "Packing table" in cut
          size 600 x 600 x 900
          place against east wall, 600 from south
          worker west
        flow product
          outside -> d1 -> table -> tank -> pack   by hand
        """;

    public override IReadOnlyList<LineChange> Mended => [new("size 1400 x 1000", "  size 1400 x 600 x 900")];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.Misplaced("outside-shell", "overlap")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var onTheWayOut = Holding(context);
        var elsewhere = onTheWayOut.Where(l => l.Published.Key is not (WayOut or Main)).ToList();
        double widest = onTheWayOut.Select(l => l.Value).DefaultIfEmpty(0).Max();
        var pinches = new Dictionary<string, Finding>();
        foreach (var walk in Walks(context))
        {
            var (width, at) = context.Space.NarrowestAlong(walk.Route, widest);
            if (width >= Slit && Tiers.Below(walk.IsWayOut ? onTheWayOut : elsewhere, width) is { } limit)
            {
                var finding = Pinch(context, limit, width, at, walk.Span);
                string place = Place(finding, at);
                if (!pinches.TryGetValue(place, out var known) || finding.Severity > known.Severity ||
                    (finding.Severity == known.Severity && width < known.Measured))
                {
                    pinches[place] = finding;
                }
            }
        }

        return pinches.Values;
    }

    /// <summary>The law on ways out leaves out vehicles, so on a trailer its figure warns.</summary>
    private List<AppliedLimit> Holding(CheckContext context)
    {
        bool vehicle = context.Plan.Shell.Kind == Model.Shells.ShellKind.Trailer;
        return [.. Tiers.Holding(context, this)
            .Select(l => vehicle && l.Severity == Severity.Error ? l with { Severity = Severity.Warning } : l)
            .Select(l => l.Published.Source == Sources[5] && l.SetBy is null ? ForPeople(l, (int)context.Facts.Crew.All.Value) : l)];
    }

    /// <summary>A German way out is wider for more people.</summary>
    private static AppliedLimit ForPeople(AppliedLimit limit, int people)
        => people <= 5 ? limit : limit with
        {
            Value = people <= 20 ? 1000 : 1200,
            Text = limit.Text.Replace("900 mm", people <= 20 ? "1000 mm" : "1200 mm", StringComparison.Ordinal),
        };

    /// <summary>Two things make one pinch, wherever it is measured; beside a wall the place counts.</summary>
    private static string Place(Finding finding, Coordinate at) => finding.Things.Count > 1
        ? string.Join(' ', finding.Things)
        : FormattableString.Invariant($"{string.Concat(finding.Things)} {Math.Round(at.X / SamePinch)} {Math.Round(at.Y / SamePinch)}");

    private Finding Pinch(CheckContext context, AppliedLimit limit, double width, Coordinate at, SourceSpan span)
    {
        var near = new Envelope(at);
        near.ExpandBy((width / 2) + 1);
        var point = Model.Shapes.Shape.Factory.CreatePoint(at);
        var between = context.Space.StationsNear(near)
            .Where(s => s.Footprint.Distance(point) <= (width / 2) + 1)
            .OrderBy(s => s.Id, StringComparer.Ordinal)
            .ToList();
        between = Opposite(between, at);
        string where = between.Count switch
        {
            0 => $"between walls, {Say.Place(at, context.Plan.Units)}",
            1 => $"beside {Named.Of(between[0])}",
            _ => $"between {Named.Of(between[0])} and {Named.Of(between[1])}",
        };
        string more = Say.SizeUp(limit.Value - width, context.Plan.Units);
        return CheckContext.Find(
            this, limit, width, [.. between.Select(s => s.Id)], $"the way {where} is {context.Text(width)} wide",
            between.Count == 0
                ? $"widen the passage by {more}"
                : $"move {Named.Of(between[0])} {more} away, or make it that much shallower", between.Count == 0
                ? span
                : between[0].Span, at);
    }

    /// <summary>The two that the way leads between; where all stand on one side of it, the nearest.</summary>
    private static List<Station> Opposite(List<Station> near, Coordinate at)
    {
        foreach (var (i, a) in near.Index())
        {
            if (near.Skip(i + 1).FirstOrDefault(b => IsBetween(a, b, at)) is { } b)
            {
                return [a, b];
            }
        }

        return [.. near.OrderBy(s => s.Footprint.Distance(Model.Shapes.Shape.Factory.CreatePoint(at))).Take(1)];
    }

    private static bool IsBetween(Station a, Station b, Coordinate at)
    {
        var (p, q) = (Nearest(a, at), Nearest(b, at));
        return ((p.X - at.X) * (q.X - at.X)) + ((p.Y - at.Y) * (q.Y - at.Y)) < 0;
    }

    private static Coordinate Nearest(Station station, Coordinate at)
        => DistanceOp.NearestPoints(station.Footprint, Model.Shapes.Shape.Factory.CreatePoint(at))[0];

    private static IEnumerable<(Route Route, SourceSpan Span, bool IsWayOut)> Walks(CheckContext context)
    {
        foreach (var leg in context.Space.LegRoutes)
        {
            // What is handed through a hatch is no walk through the wall.
            bool handedThrough = Hatch(leg.Leg.From) || Hatch(leg.Leg.To);
            if (leg.Route is { } route
                && !handedThrough
                && leg.Leg.Carriage.Kind is (CarriageKind.Walk or CarriageKind.Hand or CarriageKind.Trolley))
            {
                yield return (route, leg.Leg.Span, false);
            }
        }

        foreach (var (station, worker) in context.Plan.Stations.SelectMany(s => s.Workers.Select(w => (s, w))))
        {
            if (context.Space.FindExit(station.Room, worker.Centre.Coordinate, Mover.Person, Exits.IsExit) is { } route)
            {
                yield return (route, station.Span, true);
            }
        }
    }

    private static bool Hatch(Stop stop) => stop is OpeningStop { Opening.IsWalkable: false };
}
