using Floorplan.Model.Stations;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power;

/// <summary>What machines and heaters draw, all running at once, and what hangs on each circuit.</summary>
/// <param name="Uses">Stations in order of item number, then heaters.</param>
/// <param name="Together">Null when none says a power.</param>
public sealed record PowerLoads(IReadOnlyList<ServiceUse> Uses, Figure? Together, IReadOnlyList<CircuitLoad> Circuits)
{
    public static PowerLoads Of(PlanFacts facts)
    {
        List<ServiceUse> uses = [.. facts.Uses.Of(NeedKind.Power)];
        return new PowerLoads(
            uses, LoadSum.Of("power, all uses at once", Figure.WholePlan, uses, facts.Plan.Units), CircuitLoad.Of(facts.Plan, uses));
    }
}
