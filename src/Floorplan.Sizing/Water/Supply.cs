using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water;

/// <summary>
/// Which water point, heater or drain serves which thing: one answer for rules and sheets. It is the point of the thing's own room that
/// is nearest to its edge; of equally near ones a guarded one for a thing that holds water, then the nearest to its middle. Without one
/// in the room it is the nearest of the plan. Waste of a station runs over the floor, so only to a drain of its own room; a sink's waste
/// runs in a pipe, to any drain.
/// </summary>
public sealed class Supply
{
    private readonly Dictionary<(string Id, NeedKind Kind), Served> byThing = [];

    private Supply(IReadOnlyList<Served> all)
    {
        All = all;
        foreach (var served in all)
        {
            byThing.TryAdd((served.Use.ById, served.Use.Kind), served);
        }
    }

    /// <summary>Why the nearest is taken.</summary>
    internal static Source Origin { get; } = new("a branch is led from the nearest point", Working.Origin.CommonPractice);

    /// <summary>One for each use of water or drain, in the order of <see cref="ServiceUses.All"/>.</summary>
    public IReadOnlyList<Served> All { get; }

    public static Supply Of(PlanFacts facts)
    {
        var services = facts.Plan.Services;
        var indices = new Dictionary<NeedKind, PointIndex>
        {
            [NeedKind.ColdWater] = new(services.OfType<WaterPoint>().Where(s => s.Cold)),
            [NeedKind.HotWater] = new(services.OfType<WaterPoint>().Where(s => s.Hot)),
            [NeedKind.Drain] = new(services.OfType<Drain>()),
        };
        var heaters = new PointIndex(services.OfType<Heater>());
        var taps = services.OfType<WaterPoint>().DistinctBy(s => s.Id).ToDictionary(s => s.Id, StringComparer.Ordinal);
        var units = facts.Plan.Units;
        return new Supply([.. facts.Uses.All.Where(u => indices.ContainsKey(u.Kind)).Select(One)]);

        Served One(ServiceUse use)
        {
            var (point, choice) = use.Station is { } station ? OfStation(station, use.Kind)
                : use.Point is Hose { OnId: { } on } && taps.TryGetValue(on, out var tap) ? (tap, SupplyChoice.HangsOn)
                : (null, SupplyChoice.Main);
            return new Served(use, point, choice, units);
        }

        (ServicePoint? Point, SupplyChoice Choice) OfStation(Station station, NeedKind kind)
        {
            bool holds = kind != NeedKind.Drain && HoldsWater(station);
            bool Rather(ServicePoint point) => holds && point is IGuardedPoint { GuardsBackflow: true };
            if (indices[kind].NearestIn(station.Room, station, Rather).FirstOrDefault() is { } own)
            {
                return (own, SupplyChoice.OwnRoom);
            }

            if (kind == NeedKind.Drain && station.Role != StationRole.Sink)
            {
                return (null, SupplyChoice.None);
            }

            if (indices[kind].NearestAnywhere(station, Rather).FirstOrDefault() is { } other)
            {
                return (other, SupplyChoice.OtherRoom);
            }

            return kind == NeedKind.HotWater && heaters.NearestAnywhere(station, _ => false).FirstOrDefault() is { } heater
                ? (heater, SupplyChoice.Heater)
                : (null, SupplyChoice.None);
        }
    }

    /// <summary>Water runs into it and stays in it.</summary>
    public static bool HoldsWater(Station station) => station.Holds is not null || station.Stays is not null || station.Volume is not null;

    /// <summary>What serves a use of one thing; null when the thing has no such use.</summary>
    public Served? Of(string id, NeedKind kind) => byThing.GetValueOrDefault((id, kind));
}
