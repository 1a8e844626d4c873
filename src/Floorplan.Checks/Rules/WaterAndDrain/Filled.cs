using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing;
using Floorplan.Sizing.Water;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>What a plan says of water that could be sucked back: tanks that are filled, hoses, and what guards them.</summary>
internal sealed class Filled
{
    private readonly Plan plan;
    private readonly Supply supply;
    private readonly Dictionary<string, IGuardedPoint> points = new(StringComparer.Ordinal);

    public Filled(PlanFacts facts)
    {
        plan = facts.Plan;
        supply = facts.Supply;
        foreach (var point in plan.Services.OfType<WaterPoint>())
        {
            points.TryAdd(point.Id, point);
        }
    }

    /// <summary>Whether the plan says any gap or any guard.</summary>
    public bool Speaks => plan.Stations.Any(s => s.AirGap is not null) || plan.Services.OfType<IGuardedPoint>().Any(s => s.GuardsBackflow);

    /// <summary>Hoses that have no guard of their own and hang on a point that has none.</summary>
    public IEnumerable<Hose> OpenHoses => plan.Services.OfType<Hose>().Where(s =>
        s.Guards.Count == 0 && !(s.OnId is { } on && points.TryGetValue(on, out var point) && point.GuardsBackflow));

    /// <summary>Stations that water runs into and stays in, without a gap, and with no guard at the point that fills them.</summary>
    public IEnumerable<Station> OpenTanks => plan.Stations.Where(s =>
        s.AirGap is null
        && Supply.HoldsWater(s)
        && s.Needs.Any(n => n.Kind is NeedKind.ColdWater or NeedKind.HotWater
            && supply.Of(s.Id, n.Kind)?.Point is not IGuardedPoint { GuardsBackflow: true }));
}
