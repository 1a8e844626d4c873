using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;

namespace Floorplan.Checks.Rules.WaterAndDrain;

/// <summary>What a plan says of water that could be sucked back: tanks that are filled, hoses, and what guards them.</summary>
internal sealed class Filled
{
    private readonly Plan plan;
    private readonly NearestPoint<WaterPoint> cold;
    private readonly NearestPoint<WaterPoint> hot;
    private readonly Dictionary<string, IGuardedPoint> points = new(StringComparer.Ordinal);

    public Filled(Plan plan)
    {
        this.plan = plan;
        cold = new NearestPoint<WaterPoint>(plan, p => p.Cold);
        hot = new NearestPoint<WaterPoint>(plan, p => p.Hot);
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
        && (s.Holds is not null || s.Stays is not null || s.Volume is not null)
        && s.Needs.Any(n => IsOpen(s, n)));

    private bool IsOpen(Station station, Need need) => need.Kind switch
    {
        NeedKind.ColdWater => cold.To(station)?.Point is not { Guards.Count: > 0 },
        NeedKind.HotWater => hot.To(station)?.Point is not { Guards.Count: > 0 },
        _ => false,
    };
}
