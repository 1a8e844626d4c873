using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.Uses;

/// <summary>
/// What every thing of a plan needs: what stations say in <c>needs</c>, and what follows from a thing. A sink takes cold and hot water
/// and a drain, a hose takes what its water point gives, and a heater takes cold water and its rated power. Common practice, no source.
/// </summary>
public sealed class ServiceUses
{
    private static readonly NeedKind[] OfSink = [NeedKind.ColdWater, NeedKind.HotWater, NeedKind.Drain];

    private readonly ILookup<string, ServiceUse> byThing;
    private readonly ILookup<NeedKind, ServiceUse> byKind;

    private ServiceUses(IReadOnlyList<ServiceUse> all)
    {
        All = all;
        byThing = all.ToLookup(u => u.ById, StringComparer.Ordinal);
        byKind = all.ToLookup(u => u.Kind);
    }

    /// <summary>Stations in order of item number, then hoses and heaters in order of the file.</summary>
    public IReadOnlyList<ServiceUse> All { get; }

    public static ServiceUses Of(PlanFacts facts) => new(
    [
        .. facts.Plan.Stations.SelectMany(OfStation),
        .. facts.Plan.Services.SelectMany(p => OfPoint(p, facts.Plan)),
    ]);

    /// <summary>What one station, hose or heater uses.</summary>
    public IEnumerable<ServiceUse> By(string id) => byThing[id];

    /// <summary>Who uses a service.</summary>
    public IEnumerable<ServiceUse> Of(NeedKind kind) => byKind[kind];

    /// <summary>The uses of one kind by one station; several where the plan writes several.</summary>
    public IEnumerable<ServiceUse> By(Station station, NeedKind kind) => byThing[station.Id].Where(u => u.Kind == kind);

    /// <summary>Whether water runs to a station.</summary>
    public bool TakesWater(Station station) => byThing[station.Id].Any(u => u.Kind is NeedKind.ColdWater or NeedKind.HotWater);

    /// <summary>Whether water runs to a station, or from it to a drain.</summary>
    public bool IsWet(Station station) => byThing[station.Id].Any(u => OfSink.Contains(u.Kind));

    private static IEnumerable<ServiceUse> OfStation(Station station)
    {
        var written = station.Needs.Select(n => new ServiceUse(n.Kind, station, null, n.Amount, n.At, true, n.Span) { Written = n });
        var follows = station.Role == StationRole.Sink ? OfSink.Where(k => station.Needs.All(n => n.Kind != k)) : [];
        return written.Concat(follows.Select(k => new ServiceUse(k, station, null, null, null, false, station.Span)));
    }

    private static IEnumerable<ServiceUse> OfPoint(ServicePoint point, Plan plan)
    {
        if (point is Hose { OnId: { } on } && plan.Services.OfType<WaterPoint>().FirstOrDefault(s => s.Id == on) is { } tap)
        {
            if (tap.Cold)
            {
                yield return Follows(point, NeedKind.ColdWater);
            }

            if (tap.Hot)
            {
                yield return Follows(point, NeedKind.HotWater);
            }
        }
        else if (point is Heater heater)
        {
            yield return Follows(point, NeedKind.ColdWater);
            foreach (var rating in heater.Ratings.Where(r => r.Unit.Kind == QuantityKind.Power))
            {
                Quantity? volts = heater.Ratings.FirstOrDefault(r => r.Unit.Kind == QuantityKind.Voltage) is { Unit: not null } v
                    ? v
                    : null;
                yield return new ServiceUse(NeedKind.Power, null, point, rating, volts, true, point.Span);
            }
        }
    }

    private static ServiceUse Follows(ServicePoint point, NeedKind kind) => new(kind, null, point, null, null, false, point.Span);
}
