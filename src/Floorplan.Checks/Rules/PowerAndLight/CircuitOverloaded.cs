using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing.Power;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>What hangs on a circuit against the rating that the plan says for its outlets.</summary>
internal sealed class CircuitOverloaded : Rule
{
    private const string Share = "load of a circuit as a share of its rating";

    public override string Name => "circuit-overloaded";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "What hangs on a circuit draws more than the breaker of its outlet carries.";

    public override string Why
        => "The breaker trips in the middle of the work, and somebody fits a larger one: then the cable in the wall gets hot.";

    public override string Mend => "Write another `circuit` at one of the machines, or a larger outlet with the cable that belongs to it.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        PowerSources.UsContinuous,
        PowerSources.IecDevice,
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Share, 80, LimitUnit.Percent, Sources[0], Severity.Warning, CodeChoice.Us),
        new(Share, 100, LimitUnit.Percent, Sources[1], Severity.Warning, CodeChoice.Eu, CodeChoice.None),
    ];

    public override string Bad => """
        plan "Two machines on one outlet"
          units metric
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        panel p1 in pack, east wall, 1500 from south, 63 A 230 V single-phase
        outlet x1 in pack, north wall, 2400 from west, height 1100, 16 A 230 V, rcd, circuit 1
        station oven "Shrink oven" in pack
          size 900 x 600 x 900
          place against north wall, 1000 from west
          needs power 230 V 3 kW
          circuit 1
        station sealer "Sealer" in pack
          size 600 x 500 x 900
          place against north wall, 3000 from west
          needs power 230 V 1 kW
          circuit 1
        """;

    public override IReadOnlyList<LineChange> Mended => [new("needs power 230 V 1 kW", "  needs power 230 V 0.5 kW")];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Facts.PowerDesign is not { } design || context.Limit(this) is not { } limit)
        {
            yield break;
        }

        foreach (var circuit in design.Circuits)
        {
            if (circuit.SaidBreaker is not { } said || 100 * circuit.Current.Value / said.Value is var share && share <= limit.Value + 1e-6)
            {
                continue;
            }

            string may = context.Text(said.Value * limit.Value / 100, Measure.Current);
            string wire = circuit.Conductor is { } conductor ? " in " + conductor.Text : "";
            string larger = circuit.Breaker is { } breaker
                ? $", or have it wired for {breaker.Text}{wire} and write that at the outlet"
                : "";
            yield return CheckContext.Find(
                this, limit, share, NamedLoad.Things(circuit.Loads, OutletsOf(context.Plan, circuit.Name)),
                $"{NamedLoad.All(circuit.Loads)} on {circuit.Of} draw{(circuit.Loads.Count == 1 ? "s" : "")} {circuit.Current.Text}, "
                    + $"its outlet is for {said.Text} and may carry {may} of it for hours",
                $"write another `circuit` at {(circuit.Loads.Count > 1 ? "one of them" : "it")}{larger}", circuit.Span,
                circuit.Loads[0].At.Coordinate) with
            {
                Figures = [circuit.Current, said],
            };
        }
    }

    private static IEnumerable<string> OutletsOf(Plan plan, string circuit)
        => plan.Services.OfType<Outlet>().Where(o => o.Circuit == circuit).Select(o => o.Id);
}
