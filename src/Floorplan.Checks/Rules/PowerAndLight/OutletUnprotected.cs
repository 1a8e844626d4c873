using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Checks.Measuring;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Words.Terms;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>Outlets in rooms that are washed down, or near a sink of their room, that do not say how they are protected.</summary>
internal sealed class OutletUnprotected : Rule
{
    /// <summary>
    /// 6 ft, on plan from the outlet to the sink. Heights are left out, which makes the distance no longer than the cord's.
    /// </summary>
    private const double NearSink = 1828.8;

    /// <summary>NEC 210.8(B): larger outlets are outside the clause.</summary>
    private const double LargestSinglePhase = 50;

    /// <inheritdoc cref="LargestSinglePhase"/>
    private const double LargestThreePhase = 100;

    /// <summary>IEC 60364-4-41, 411.3.3.</summary>
    private const double LargestInEurope = 32;

    public override string Name => "outlet-unprotected";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says
        => "An outlet in a room that is washed down, or near a sink, has no protection against current through a person.";

    public override string Why
        => "With wet hands on a wet floor a small fault current kills. A breaker does not see it; a device that compares both conductors "
            + "switches off in time.";

    public override string Mend => "Write `gfci` (or `rcd`) at the outlet and have it fitted, or move the outlet away from water.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new Source(
            "NEC 2023 210.8(B): outlets in damp or wet places, at food preparation sinks, and within 6 ft of a sink",
            Origin.FoundInPublicCopy, Force.ModelCode).In("us"),
        new Source(
            "IEC 60364-4-41:2017 and BS 7671:2018, 411.3.3: a residual current device of 30 mA for every socket outlet up to 32 A",
            Origin.FromMemory, Force.Standard).In("eu"),
        new("an outlet that a wet hand at a sink reaches; common practice", Origin.CommonPractice),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new("distance from an outlet without protection to a sink", NearSink, LimitUnit.Millimetres, Sources[0], Severity.Warning),
        new("distance from an outlet without protection to a sink", NearSink, LimitUnit.Millimetres, Sources[2], Severity.Warning,
            CodeChoice.None),
    ];

    public override string Bad => """
        plan "Packing with a sink"
          units metric
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        sink s1 hand in pack, 400 x 350 x 900, against north wall, 1000 from west
        outlet x1 in pack, north wall, 2400 from west, height 1100, 16 A 230 V
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("outlet x1", "outlet x1 in pack, north wall, 2400 from west, height 1100, 16 A 230 V, gfci"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        var outlets = context.Plan.Services.OfType<Outlet>()
            .Where(s => s is { Room: not null, Guard: null } && IsCovered(s, context.Plan.Head.Code)).ToList();
        var limit = context.Limit(this);
        var sinks = context.Plan.Stations.Where(s => s.Role == StationRole.Sink).ToLookup(s => s.Room.Id);
        foreach (var outlet in outlets)
        {
            if (outlet.Room!.WashedDown)
            {
                yield return CheckContext.Find(
                    this, Severity.Warning, [outlet.Id],
                    $"outlet {outlet.Id} is in {Named.Of(outlet.Room)}, which is washed down, and has no protection",
                    Mending(context), outlet.Span, outlet.At.Coordinate) with
                { Limit = $"protection where it is wet ({context.SourceOf(this).Text})" };
                continue;
            }

            // In Europe no outlet up to 32 A goes without, wherever it is; a distance that the plan sets holds instead.
            if (context.Plan.Head.Code == CodeChoice.Eu && limit?.SetBy is null)
            {
                yield return CheckContext.Find(
                    this, Severity.Warning, [outlet.Id], $"outlet {outlet.Id} in {Named.Of(outlet.Room)} does not say its protection",
                    Mending(context), outlet.Span, outlet.At.Coordinate) with
                { Limit = $"30 mA for every socket outlet ({Sources[1].Text})" };
                continue;
            }

            var at = Shape.Factory.CreatePoint(outlet.At.Coordinate);
            if (sinks[outlet.Room.Id].Select(s => (Sink: s, Away: s.Footprint.Distance(at))).OrderBy(s => s.Away)
                .FirstOrDefault() is { Sink: { } sink, Away: var away }
                && limit is not null && away < limit.Value - Tiers.Tolerance)
            {
                yield return CheckContext.Find(
                    this, limit, away, [outlet.Id, sink.Id],
                    $"outlet {outlet.Id} is {context.Text(away)} from {Named.Of(sink)} and has no protection",
                    $"{Mending(context)}; or move it {Say.SizeUp(limit.Value - away, context.Plan.Units)} or more farther off", outlet.Span,
                    outlet.At.Coordinate);
            }
        }
    }

    private static string Mending(CheckContext context) =>
        $"write `{(context.Plan.Head.Code == CodeChoice.Us ? "gfci" : "rcd")}` at it and have a licensed electrician fit it";

    /// <summary>An outlet that says no current is taken as a common one.</summary>
    private static bool IsCovered(Outlet outlet, CodeChoice code)
    {
        double most = code == CodeChoice.Eu ? LargestInEurope : outlet.Phases == Phases.ThreePhase ? LargestThreePhase : LargestSinglePhase;
        return outlet.Ratings.Where(r => r.Unit.Kind == QuantityKind.Current).All(r => r.Base <= most);
    }
}
