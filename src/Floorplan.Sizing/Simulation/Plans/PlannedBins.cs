using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>The bins of a line, and what each of its places puts into them.</summary>
internal static class PlannedBins
{
    /// <param name="crewOf">Index of the crew by room or station.</param>
    public static (List<LineBin> Bins, List<(int, double)>[] Waste) Of(
        PlanFacts facts, IReadOnlyList<Stop> stops, Dictionary<string, int> crewOf)
    {
        var bins = new List<LineBin>();
        var indices = new Dictionary<string, int>(StringComparer.Ordinal);
        var waste = stops.Select(_ => new List<(int, double)>()).ToArray();
        for (int s = 0; s < stops.Count; s++)
        {
            foreach (var one in (stops[s] as StationStop)?.Station.Wastes ?? [])
            {
                if (one.BinId is { } id && one.Amount is { Unit.Kind: QuantityKind.Mass } amount
                    && facts.Plan.Stations.FirstOrDefault(b => b.Id == id) is { Volume: { } volume } bin)
                {
                    if (!indices.TryGetValue(id, out int index))
                    {
                        indices[id] = index = bins.Count;
                        bins.Add(Bin(facts, crewOf, bin, volume, s));
                    }

                    waste[s].Add((index, amount.Base));
                }
            }
        }

        return (bins, waste);
    }

    private static LineBin Bin(PlanFacts facts, Dictionary<string, int> crewOf, Station bin, Quantity volume, int near)
    {
        var made = new LineBin(bin.Id, volume.Base * 1000 * DayAssumptions.WasteDensity);
        var outWay = LineWay.During(facts, Stream.Waste).FirstOrDefault(w => w.From.Name == bin.Id && w.Legs.All(l => l.Route is not null));
        if (outWay is null || !crewOf.TryGetValue(bin.Room.Id, out int crew))
        {
            return made;
        }

        double metres = outWay.Millimetres / 1000;
        return made with
        {
            Crew = crew,
            Trip = Ticks.FromSeconds((metres / DayAssumptions.Loaded) + (metres / DayAssumptions.Empty) + DayAssumptions.TipBin),
            Near = near,
            Metres = metres,
        };
    }
}
