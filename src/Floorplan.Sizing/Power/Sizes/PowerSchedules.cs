using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Power.Circuits;
using Floorplan.Sizing.Power.Panels;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Sizes;

/// <summary>Circuits, and how each panel shares them out to its lines.</summary>
internal static class PowerSchedules
{
    public static IReadOnlyList<SizeTable> Of(PowerDesign design, Plan plan) =>
    [
        .. design.Circuits.Count > 0 ? [Circuits(design, plan.Units)] : Array.Empty<SizeTable>(),
        .. design.Panels.Where(p => p.Ways.Count > 0).Select(p => Panel(p, plan.Units)),
    ];

    private static SizeTable Circuits(PowerDesign design, UnitSystem units) => new(
        "Circuits", ["Circuit", "Serves", "Voltage", "Load", "Current", "Breaker", "Conductor", "Length", "Drop", "Guard"],
        [.. design.Circuits.Select(c => Row(c, units))],
        [.. design.Circuits.SelectMany(c => new[] { c.Draws, c.Current, c.Breaker, c.Conductor, c.Length, c.Drop }).OfType<Figure>()]);

    private static IReadOnlyList<string> Row(SizedCircuit c, UnitSystem units) =>
    [
        c.Mark,
        c.Serves,
        QuantityText.Of(c.Volts, Measure.Voltage, units) + (c.Phases == 3 ? " 3~" : ""),
        c.Draws.Text,
        c.Current.Text,
        c.Breaker?.Text ?? "not one",
        c.Conductor?.Text ?? "not one",
        c.Length?.Text ?? "not said",
        c.Drop?.Text ?? "",
        c.Guard,
    ];

    private static SizeTable Panel(SizedPanel panel, UnitSystem units)
    {
        var heads = Enumerable.Range(1, panel.System.Lines).Select(i => FormattableString.Invariant($"L{i}")).ToList();
        string unit = QuantityText.Unit(Measure.ApparentPower, units);
        double[] sums = PanelBalance.Sums(panel.System, panel.Ways);
        return new SizeTable(
            $"Panel {panel.Panel.Id}, load on each line in {unit}", ["Circuit", "Breaker", .. heads],
            [
                .. panel.Ways.Select(w => (IReadOnlyList<string>)
                    [w.Circuit.Mark, w.Circuit.Breaker?.Text ?? "not one", .. w.OnLines.Select(v => v > 0 ? Number(v) : "")]),
                ["all", panel.Rating?.Text ?? "", .. sums.Select(Number)],
            ],
            [.. new[] { panel.Demand, panel.Current, panel.Rating, panel.Uneven }.OfType<Figure>()]);

        string Number(double va) => QuantityText.Number(va, Measure.ApparentPower, units);
    }
}
