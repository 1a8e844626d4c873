using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Flows;
using NetTopologySuite.Geometries;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class DoublesBack : Rule
{
    private const string Share = "share of the product's way walked against its main direction";

    /// <summary>A line that starts and ends nearer than this, as in a U, has no main direction to speak of. Own assumption.</summary>
    private const double LeastProgressMm = 1000;

    public override string Name => "doubles-back";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "Too much of a product's way runs against the straight line from its first to its last station. Steps aside do not count, so "
            + "a line in the shape of a U is fine.";

    public override string Why
        => "Every metre back is walked hundreds of times a day with full hands, meets those who walk forward, and brings finished "
            + "product past raw.";

    public override string Mend => "Put the stations in the order of the work, or feed a station from its other side.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("A fifth of the way against the main direction", Origin.OwnAssumption),
        HygieneSources.OneWayFlow,
    ];

    public override IReadOnlyList<RuleLimit> Limits => [new(Share, 20, LimitUnit.Percent, Sources[0], Severity.Warning)];

    public override IReadOnlyList<Cause> FollowsFrom => [.. Cause.AtSameThings("product-goes-back"), .. Cause.Misplaced("outside-shell")];

    public override string Bad => """
        plan "Apple room"
          units metric
        shell shed 10 m x 3 m x 2.5 m
        room wash "Wash and pack" clean from west to east
        door d1 wash to outside, west wall, 1000 from south, 900 x 2050, swings out, closes itself
        drain fd1 floor in wash, 2500 from west, centred, 100
        drain fd2 floor in wash, 7500 from west, centred, 100
        sink s1 hand in wash, 400 x 350, against south wall, 2400 from west
        sink s2 hand in wash, 400 x 350, against south wall, 8000 from west
        station tip "Tipping bin" in wash
          size 900 x 600 x 900
          place against north wall, 1000 from west
          worker south
        station sort "Sorting table" in wash
          size 900 x 600 x 900
          place against north wall, 7000 from west
          worker south
        station rinse "Rinsing tank" in wash
          size 900 x 600 x 900
          place against north wall, 3000 from west
          worker south
        station pack "Packing table" in wash
          size 900 x 600 x 900
          place against north wall, 8500 from west
          worker south
        flow product
          tip -> sort -> rinse -> pack   by hand
        """;

    public override IReadOnlyList<LineChange> Mended => [new("tip ->", "  tip -> rinse -> sort -> pack   by hand")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this, Share) is not { } limit)
        {
            yield break;
        }

        foreach (var flow in Journey.Of(context.Space, Stream.Product).GroupBy(j => j.Flow.Span.Start))
        {
            // From outside to the first station and from the last to outside the way depends on where the doors are, not on the order
            // of work.
            var journeys = flow.Where(j => j.From is not OutsideStop && j.To is not OutsideStop && j.Legs.All(l => l.Route is not null))
                .ToList();
            if (journeys.Count == 0 || Direction(journeys) is not { } direction)
            {
                continue;
            }

            double total = journeys.Sum(j => j.Legs.Sum(l => context.Facts.Ways.ByLeg[l].Value));
            double back = journeys.Sum(j => Back(j, direction));
            double share = total > 0 ? 100 * back / total : 0;
            if (share > limit.Value)
            {
                var worst = journeys.MaxBy(j => Back(j, direction))!;
                var path = worst.Legs[0].Route!.Path;
                yield return CheckContext.Find(this, limit, share, worst.Things,
                    $"product walks {context.Walk(back)} of {context.Walk(total)} against its main direction, most of it from "
                        + $"{Named.Of(worst.From)} to {Named.Of(worst.To)}",
                    $"place {Named.Of(worst.To)} beyond {Named.Of(worst.From)} in the order of the work",
                    worst.Legs[0].Leg.Span, path.GetCoordinateN(path.NumPoints / 2));
            }
        }
    }

    private static Coordinate? Direction(IReadOnlyList<Journey> journeys)
    {
        var from = journeys[0].Legs[0].Route!.Path.StartPoint.Coordinate;
        var to = journeys[^1].Legs[^1].Route!.Path.EndPoint.Coordinate;
        double length = from.Distance(to);
        return length < LeastProgressMm ? null : new Coordinate((to.X - from.X) / length, (to.Y - from.Y) / length);
    }

    private static double Back(Journey journey, Coordinate direction)
        => journey.Legs.SelectMany(l => l.Route!.Path.Coordinates.Zip(l.Route.Path.Coordinates.Skip(1)))
            .Sum(step => Math.Max(0, -((step.Second.X - step.First.X) * direction.X + (step.Second.Y - step.First.Y) * direction.Y)));
}
