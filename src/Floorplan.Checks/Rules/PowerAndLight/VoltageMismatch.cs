using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Limits;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing.Power.Circuits;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Power.Panels;

namespace Floorplan.Checks.Rules.PowerAndLight;

/// <summary>The voltage and the phases that a machine says against its outlet and its panel.</summary>
internal sealed class VoltageMismatch : Rule
{
    public override string Name => "voltage-mismatch";

    public override RuleGroup Group => RuleGroup.PowerAndLight;

    public override string Says => "A machine is made for another voltage, or for other phases, than its outlet or its panel gives.";

    public override string Why
        => "With too much voltage it burns, with too little it stands still and gets hot, and three phases are not made of one.";

    public override string Mend
        => "Correct what is written; else buy the machine for the voltage that is there, or have the panel fed with the one that it needs.";

    public override string? Caution => ElectricWork.Caution;

    public override IReadOnlyList<Source> Sources { get; } =
    [
        new("IEC 60038 and NEMA MG 1, 12.44: machines bear 10 % more or less than their voltage", Origin.FromMemory, Force.ModelCode),
        new("NEC 110.4: the voltage of equipment and of its circuit agree", Origin.FromMemory, Force.ModelCode),
    ];

    public override IReadOnlyList<RuleLimit> Limits =>
    [
        new(
            "difference of voltage, of what the machine is made for", 100 * PanelSystem.Near, LimitUnit.Percent, Sources[0],
            Severity.Warning),
    ];

    public override string Bad => """
        plan "Sealer on a low panel"
          units metric
        shell shed 6000 x 3000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself
        panel p1 in pack, east wall, 1500 from south, 63 A 120 V single-phase
        station sealer "Sealer" in pack
          size 600 x 500 x 900
          place against north wall, 1000 from west
          needs power 230 V 2 kW
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("panel p1", "panel p1 in pack, east wall, 1500 from south, 63 A 230 V single-phase"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        if (context.Facts.PowerDesign is not { } design || context.Limit(this) is not { } limit)
        {
            yield break;
        }

        var outlets = context.Plan.Services.OfType<Outlet>().Where(o => o.Circuit.Length > 0)
            .ToLookup(o => o.Circuit, StringComparer.Ordinal);
        foreach (var circuit in design.Circuits)
        {
            foreach (var load in circuit.Loads.Where(l => l.SaysVolts))
            {
                if ((Against(context, limit, load, outlets[circuit.Name]) ?? Against(context, limit, load, circuit)) is { } found)
                {
                    yield return found;
                }
            }
        }
    }

    private Finding? Against(CheckContext context, AppliedLimit limit, PowerLoad load, IEnumerable<Outlet> outlets)
    {
        var rated = outlets.Where(o => load.Circuit.Length > 0 && o.Id != load.Id)
            .Select(o => (Outlet: o, Volts: o.Ratings.FirstOrDefault(r => r.Unit.Kind == QuantityKind.Voltage && r.Base > 0)))
            .Where(o => o.Volts.Unit is not null).ToList();
        if (rated.Count == 0)
        {
            return null;
        }

        var (outlet, volts) = rated.MinBy(o => Math.Abs(o.Volts.Base - load.Volts));
        double off = Off(load, volts.Base);
        return off <= limit.Value + 1e-6 ? null : CheckContext.Find(
            this, limit, off, [load.Id, outlet.Id],
            $"{NamedLoad.Of(load)} is made for {Volts(context, load.Volts)}, outlet {outlet.Id} of its circuit gives "
                + Volts(context, volts.Base),
            $"write {Volts(context, volts.Base)} at {load.Id} if that is its voltage, or {Volts(context, load.Volts)} at outlet "
                + $"{outlet.Id} and have it wired so, or another `circuit` at one of them",
            load.Span, load.At.Coordinate);
    }

    private Finding? Against(CheckContext context, AppliedLimit limit, PowerLoad load, SizedCircuit circuit)
    {
        if (circuit.Panel is not { } panel)
        {
            return null;
        }

        var system = PanelSystem.Of(panel, context.Plan.Head.Code);
        string gives = $"panel {panel.Id} gives {system.Text(context.Plan.Units)}";
        if (system.Nearest(load.Volts, load.Phases) is not { } nearest)
        {
            return CheckContext.Find(
                this, limit.Severity, [load.Id, panel.Id], $"{NamedLoad.Of(load)} takes three phases, {gives}",
                $"write `three-phase` and its voltage at panel {panel.Id} and have it fed so, or take a machine for one phase and write "
                    + $"`single-phase` at {load.Id}",
                load.Span, load.At.Coordinate);
        }

        double off = Off(load, nearest);
        string split = context.Plan.Head.Code == CodeChoice.Us || Math.Abs((nearest / 2) - load.Volts) > load.Volts / 10
            ? ""
            : "; where a panel gives half of its voltage too, write `code us`";
        return off <= limit.Value + 1e-6 ? null : CheckContext.Find(
            this, limit, off, [load.Id, panel.Id],
            $"{NamedLoad.Of(load)} is made for {Volts(context, load.Volts)}{(load.Phases == 3 ? " three-phase" : "")}, {gives}",
            $"write {Volts(context, nearest)} at {load.Id} if that is its voltage, or the voltage of its supply at panel {panel.Id}, or "
                + $"have a transformer put in{split}",
            load.Span, load.At.Coordinate);
    }

    /// <summary>In percent of what the load is made for.</summary>
    private static double Off(PowerLoad load, double volts) => 100 * Math.Abs(volts - load.Volts) / load.Volts;

    private static string Volts(CheckContext context, double volts) => context.Text(volts, Measure.Voltage);
}
