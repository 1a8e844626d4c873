using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Flows;
using Floorplan.Model.Space;
using Floorplan.Model.Space.Legs;
using Floorplan.Model.Space.Turning;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Rules.GettingOut;

/// <summary>Trolleys on their real way, at every bend of it: slid and turned on their castors over all the floor that lies there.</summary>
internal sealed class TrolleyCannotTurn : Rule
{
    /// <summary>A platform trolley of 600 x 900 mm; common practice, no source.</summary>
    private const double UsualLength = 900;

    /// <summary>The trolley keeps this far off walls on both sides together, mm; own assumption.</summary>
    private const double Clearance = 20;

    public override string Name => "trolley-cannot-turn";

    public override RuleGroup Group => RuleGroup.GettingOut;

    public override string Says
        => "On its way a trolley comes to a corner that it cannot be slid or turned round, though all the free floor near the corner is "
            + "used: doorways, side passages to back into, and room to spin.";

    public override string Why => "A loaded trolley that has to be lifted round a corner takes two people and a back.";

    public override string Mend
        => "Widen the passage before or after the corner, take a shorter trolley, or move what stands in the corner.";

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("geometry: a rigid rectangle on castors, moved pose by pose; the search agrees with the textbook problem of a ladder or "
            + "rectangle round a corner", Origin.CommonPractice, Force.Measured),
        new(
            "the search lets pass what is up to 16 mm too large on a side, and for a trolley longer than 2.5 m up to 1/150 of its length",
            Origin.OwnAssumption),
        new("platform trolley 600 x 900 mm, common practice", Origin.CommonPractice),
        new("10 mm free on either side", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<RuleLimit> Limits
        => [new("length of a trolley when the plan does not say it", UsualLength, LimitUnit.Millimetres, Sources[2], Severity.Warning)];

    public override string Bad => """
        plan "Round the freezer"
          units metric
        shell shed 9000 x 5000 x 2600
        room pack "Packing" dry from west to east
        room freezer "Freezer" cold area 7780 x 3780, in pack, corner north-west
        door d1 pack to outside, west wall, 60 from south, 820 x 2100, swings out, closes itself
        door d2 pack to outside, north wall, 60 from east, 820 x 2100, swings out, closes itself
        door d3 freezer to outside, west wall, centred, 1200 x 2100, swings out, closes itself, opens from inside
        flow product
          outside -> d1 -> d2 -> outside   by trolley 750 wide
        limit trolley-cannot-turn 1300 mm "length of our crate trolleys"
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("room freezer", "room freezer \"Freezer\" cold area 7450 x 3450, in pack, corner north-west"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Limit(this) is not { } usual)
        {
            yield break;
        }

        var turn = new TrolleyTurn(context.Plan);
        foreach (var leg in context.Space.LegRoutes.Where(l => l is { Leg.Carriage.Kind: CarriageKind.Trolley, Route: not null }))
        {
            double width = leg.Leg.Carriage.Width?.Millimetres ?? LegMover.TrolleyWidth;
            double length = leg.Leg.Carriage.Length?.Millimetres ?? usual.Value;
            if (Tightest(context, turn, leg.Route!, width, length) is { } tight)
            {
                var stops = new[] { leg.Leg.From, leg.Leg.To }.Where(s => s is not OutsideStop).Select(s => s.Name);
                var finding = CheckContext.Find(
                    this, usual, tight.Passes, [.. stops.Distinct()],
                    $"a trolley {context.Text(width)} wide and {context.Text(length)} long from {Named.Of(leg.Leg.From)} to "
                        + $"{Named.Of(leg.Leg.To)} cannot turn at the corner "
                        + $"{Say.Place(tight.At, context.Plan.Units)}: {context.Text(Math.Floor(tight.Passes))} goes round",
                    "widen the passage there, take a shorter trolley, or write its length after its width: by trolley 600 wide 800 long",
                    leg.Leg.Span, tight.At);
                yield return leg.Leg.Carriage.Length is null
                    ? finding
                    : finding with { Limit = "the length of the trolley in this plan", LimitValue = length };
            }
        }
    }

    /// <summary>Where the way itself leaves less than the clearance, the trolley is taken without.</summary>
    private static (Coordinate At, double Passes)? Tightest(
        CheckContext context, TrolleyTurn turn, Route route, double width, double length)
    {
        double free = width + Clearance;
        var tight = turn.Tightest(route, new LongBox(length, free));
        return tight is not null && context.Space.NarrowestAlong(route, free).WidthMm < free - Tiers.Tolerance
            ? turn.Tightest(route, new LongBox(length, width))
            : tight;
    }
}
