using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Flows;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>The real walk from where strong cleaners are kept to the nearest eyewash.</summary>
internal sealed class EyewashTooFar : Rule
{
    /// <summary>What a person walks in 10 seconds, 55 ft.</summary>
    private const double TenSeconds = 55 * 304.8;

    public override string Name => "eyewash-too-far";

    public override RuleGroup Group => RuleGroup.WaterAndDrain;

    public override string Says
        => "A `store … chemicals`, or one whose label says so, has no eyewash within ten seconds' walk. A plan that keeps no "
            + "chemicals, or does not say so, is not "
            + "looked at.";

    public override string Why
        => "Caustic foam and acid descaler blind within a minute. Whoever has it in the eyes does not find a far sink, nor the handle of a "
            + "door.";

    public override string Mend
        => "Set a `sink … eyewash` near the store, on the same level, with no door or step between. It runs lukewarm for 15 minutes.";

    public override string? Caution
        => "Strong cleaners burn eyes and skin, and some must never meet. Follow their safety data sheets; local codes prevail.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "ANSI/ISEA Z358.1: an eyewash within 10 seconds, about 55 ft, on the same level, 15 minutes of tepid water",
            Origin.FoundInSecondaryCopy, Force.Standard).In("us"),
        new("ten seconds of walking, own assumption; EN 15154-2 asks 6 L/min and gives no distance", Origin.OwnAssumption),
        new Source(
            "29 CFR 1910.151(c): quick drenching where eyes or body may be exposed to corrosives, without a distance",
            Origin.FoundInSecondaryCopy, Force.Law).In("us"),
    ];

    public override IReadOnlyList<RuleLimit> Limits
        =>
        [
            new("walk to an eyewash", TenSeconds, LimitUnit.Millimetres, Sources[0], Severity.Warning),
            new("walk to an eyewash", TenSeconds, LimitUnit.Millimetres, Sources[1], Severity.Note),
        ];

    public override string Bad => """
        plan "Cleaning room"
          units metric
        shell shed 6000 x 3000 x 2500
        room clean "Cleaning" staff from west to east
        door d1 clean to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        store foam chemicals in clean, 800 x 400 x 1200, against north wall, 600 from west
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        LineChange.After("store foam", "sink e1 eyewash in clean, 400 x 400 x 900, against north wall, 2000 from west"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var stores = context.Plan.Stations.Where(Chemicals.AreKeptIn).ToList();
        if (stores.Count == 0 || context.Limit(this) is not { } limit)
        {
            yield break;
        }

        var washes = context.Plan.Stations
            .Where(s => s is { Role: StationRole.Sink, Purpose: "eyewash" })
            .Select(s => (Sink: s, At: context.Space.StandingAt(new StationStop(s, s.Span), s.Room)))
            .Where(w => w.At is not null)
            .ToList();
        foreach (var store in stores)
        {
            if (context.Space.StandingAt(new StationStop(store, store.Span), store.Room) is not { } from)
            {
                continue;
            }

            var (walk, nearest) = washes
                .Select(w => (Walk: Walk(context, store, from, w.Sink, w.At!), (Station?)w.Sink))
                .DefaultIfEmpty((double.PositiveInfinity, null))
                .MinBy(w => w.Item1);
            if (walk > limit.Value + Tiers.Tolerance)
            {
                yield return Report(context, store, walk, double.IsInfinity(walk) ? null : nearest, limit);
            }
        }
    }

    private static double Walk(CheckContext context, Station store, Coordinate from, Station sink, Coordinate to) =>
        context.Space.Find(store.Room, from, sink.Room, to, Mover.Person)?.LengthMm ?? double.PositiveInfinity;

    private Finding Report(CheckContext context, Station store, double walk, Station? nearest, AppliedLimit limit) => nearest is null
        ? CheckContext.Find(
            this, limit, walk, [store.Id], $"{Named.Of(store)} keeps chemicals, and no walk leads from it to an eyewash",
            $"add a `sink … eyewash in {store.Room.Id}`", store.Span, store.Bounds.Centre.Coordinate)
        : CheckContext.Find(
            this, limit, walk, [store.Id, nearest.Id],
            $"the walk from {Named.Of(store)} to the nearest eyewash, {nearest.Id}, is {context.Walk(walk)}",
            $"move {nearest.Id} nearer by {context.Walk(walk - limit.Value)}, or add an eyewash", store.Span,
            store.Bounds.Centre.Coordinate);
}
