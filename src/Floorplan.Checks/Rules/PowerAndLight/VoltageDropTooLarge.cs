using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Power.Circuits;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>What a circuit loses along the smallest cable that carries it.</summary>
internal sealed class VoltageDropTooLarge : Rule
{
    private const string Others = "voltage drop of a circuit";
    private const string Lamps = "voltage drop of lamps";

    public override string Name => "voltage-drop";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "Along its cable a circuit loses more of its voltage than good practice lets it.";

    public override string Why => "A motor with too little voltage starts hard and runs hot, heat takes longer, and lamps flicker.";

    public override string Mend => "Hang the panel nearer, share the load out to two circuits, or have a thicker cable pulled.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new(
            "NEC 210.19(A) and 215.2(A), informational notes: 5 % from the supply to the farthest outlet",
            Origin.FoundInSecondaryCopy, Force.Standard),
        new("IEC 60364-5-52, Table G.52.1, public supply: 3 % for light, 5 % for other uses", Origin.FoundInSecondaryCopy, Force.Standard),
        new("the smallest cable that carries the circuit, along the walls under the ceiling", Origin.OwnAssumption),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(Others, 5, LimitUnit.Percent, Sources[0], Severity.Warning, CodeChoice.Us),
        new(Others, 5, LimitUnit.Percent, Sources[1], Severity.Warning, CodeChoice.Eu, CodeChoice.None),
        new(Lamps, 3, LimitUnit.Percent, Sources[1], Severity.Warning, CodeChoice.Eu, CodeChoice.None),
    ];

    public override string Bad => """
        plan "Sealer far from the panel"
          units metric
          code us
        shell shed 24000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 8000 from west, 1000 x 2050, swings out, closes itself, opens from inside
        door d2 pack to outside, south wall, 16000 from west, 1000 x 2050, swings out, closes itself, opens from inside
        panel p1 in pack, west wall, 1500 from south, 60 A 120 V single-phase
        station sealer "Sealer" in pack
          size 600 x 500 x 900
          place against north wall, 500 from east
          needs power 120 V 1.4 kW
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("panel p1", "panel p1 in pack, east wall, 1500 from south, 60 A 120 V single-phase"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Facts.PowerDesign is not { } design)
        {
            yield break;
        }

        foreach (var circuit in design.Circuits)
        {
            if (circuit is not { Drop: { } drop, Conductor: { } conductor, Panel: { } panel, Length: { } length }
                || LimitFor(context, circuit) is not { } limit || 100 * drop.Value <= limit.Value + 1e-6)
            {
                continue;
            }

            string thicker = circuit.Larger.FirstOrDefault(l => 100 * l.Drop <= limit.Value) is { Name: { } name } larger
                ? $"have {name} pulled, which loses {context.Text(larger.Drop, Measure.Ratio)}, and accept this; or "
                : "";
            yield return CheckContext.Find(
                this, limit, 100 * drop.Value, NamedLoad.Things(circuit.Loads, panel.Id),
                $"{NamedLoad.All(circuit.Loads)} on {circuit.Of} lose{(circuit.Loads.Count == 1 ? "s" : "")} {drop.Text} of the voltage "
                    + $"along {length.Text} of {conductor.Text} from panel {panel.Id}",
                $"{thicker}place the panel nearer, or write another `circuit` at one of several loads", circuit.Span,
                circuit.Loads[0].At.Coordinate) with
            {
                Figures = [drop, length, conductor],
            };
        }
    }

    /// <summary>What the plan sets holds for lamps too.</summary>
    private AppliedLimit? LimitFor(CheckContext context, SizedCircuit circuit)
        => context.Limit(this) is { } others && (others.SetBy is not null || !circuit.IsLight)
            ? others
            : context.Limit(this, Lamps) ?? context.Limit(this);
}
