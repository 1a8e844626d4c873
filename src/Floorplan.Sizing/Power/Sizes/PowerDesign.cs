using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Sizing.Power.Circuits;
using Floorplan.Sizing.Power.Loads;
using Floorplan.Sizing.Power.Panels;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Sizes;

/// <summary>All that is worked out of a plan's power; rules, sheets and the subject show the same figures.</summary>
/// <param name="Connected">VA of everything at once.</param>
/// <param name="Demand">VA of what is on at once, by factors.</param>
/// <param name="Missing">Loads that say no power.</param>
/// <param name="Figures">In the order in which they are worked out.</param>
public sealed record PowerDesign(
    IReadOnlyList<PowerLoad> Loads, IReadOnlyList<SizedCircuit> Circuits, IReadOnlyList<SizedPanel> Panels, Figure Connected,
    Figure Demand, GeneratorSize Generator, IReadOnlyList<NotSaid> Missing, IReadOnlyList<Figure> Figures)
{
    private static readonly Source SumSource = new("arithmetic: everything at once", Origin.OwnAssumption);

    /// <summary>Null where the plan has no panel, no outlet and nothing that draws power but lamps.</summary>
    internal static PowerDesign? Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        List<Panel> panels = [.. plan.Services.OfType<Panel>()];
        if (panels.Count == 0 && facts.Power.Uses.Count == 0 && !plan.Services.OfType<Outlet>().Any())
        {
            return null;
        }

        var workings = new Workings(plan.Units);
        var missing = new List<NotSaid>();
        var loads = new LoadMaker(facts, PanelSystem.Of(panels.FirstOrDefault(), plan.Head.Code), workings, missing).All();
        var sizer = new CircuitSizer(plan, workings);
        List<SizedCircuit> circuits = [.. CircuitMaker.Of(plan, loads).Select(sizer.Of)];
        var connected = workings.Of(
            "connected load", Figure.WholePlan, loads.Sum(l => l.Draws.Value), Measure.ApparentPower, "sum of what all loads draw",
            WorkingText.Sum([.. loads.Select(l => workings.Fine(l.Draws.Value, Measure.ApparentPower))]), SumSource,
            [.. loads.Select(l => FigureInput.Of(l.Draws))]);
        var demand = DemandLoad.Of(Figure.WholePlan, loads, plan.Head.Code, workings);
        var sized = panels.ConvertAll(p => PanelSizer.Of(
            p, plan.Head.Code, [.. circuits.Where(c => ReferenceEquals(c.Panel, p))], panels.Count == 1 ? demand : null, workings));
        var generator = GeneratorSize.Of(loads, demand, workings);
        return new PowerDesign(loads, circuits, sized, connected, demand, generator, missing,
            workings.Figures);
    }
}
