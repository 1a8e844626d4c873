using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Sizing.Power.Circuits;
using Floorplan.Sizing.Power.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Panels;

/// <summary>What each panel carries against its rating.</summary>
internal static class PanelSizer
{
    private static readonly Source Own = new(
        "the most loaded line, with the demand shared out as the connected loads are", Origin.OwnAssumption);

    private static readonly Source SaidSource = new("rating of the panel, as the plan says it", Origin.OwnAssumption);

    /// <param name="whole">The demand of the whole plan, where the panel carries all of it; else null.</param>
    public static SizedPanel Of(Panel panel, CodeChoice code, IReadOnlyList<SizedCircuit> circuits, Figure? whole, Workings workings)
    {
        var system = PanelSystem.Of(panel, code);
        var ways = PanelBalance.Of(system, circuits);
        double[] sums = PanelBalance.Sums(system, ways);
        double connected = sums.Sum();
        var demand = whole ?? DemandLoad.Of(panel.Id, [.. circuits.SelectMany(c => c.Loads)], code, workings);
        double most = sums.Max();
        double amperes = connected > 0 ? most * (demand.Value / connected) / system.ToNeutral : 0;
        string Kva(double va) => workings.Fine(va, Measure.ApparentPower);
        var current = workings.Of(
            "current of the panel", panel.Id, amperes, Measure.Current,
            "load on the most loaded line x demand / connected load / volts of a line",
            $"{Kva(most)} x {demand.Text} / {Kva(connected)} / {QuantityText.Of(system.ToNeutral, Measure.Voltage, workings.Units)}",
            Own, FigureInput.Of(demand), FigureInput.Said("panel " + panel.Id, system.Text(workings.Units), panel.Span));
        double uneven = connected > 0 ? (most * system.Lines / connected) - 1 : 0;
        var balance = workings.Of(
            "imbalance of the lines", panel.Id, uneven, Measure.Ratio, "most loaded line / mean of the lines - 1",
            $"{Kva(most)} / ({Kva(connected)} / {QuantityText.Plain(system.Lines)}) - 1", Own,
            FigureInput.Said("panel " + panel.Id, system.Text(workings.Units), panel.Span));
        return new SizedPanel(panel, system, ways, demand, current, Rating(panel, workings), balance);
    }

    private static Figure? Rating(Panel panel, Workings workings)
    {
        if (panel.Ratings.FirstOrDefault(r => r.Unit.Kind == QuantityKind.Current && r.Base > 0) is not { Unit: not null } said)
        {
            return null;
        }

        string text = QuantityText.Of(said, workings.Units);
        return workings.Of(
            "rating of the panel", panel.Id, said.Base, Measure.Current, "as the plan says it", text, SaidSource,
            FigureInput.Said("panel " + panel.Id, text, panel.Span));
    }
}
