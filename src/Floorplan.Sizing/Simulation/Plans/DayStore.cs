using Floorplan.Model;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>A store at the end of the line and what comes into it in a day at the pace of the target.</summary>
/// <param name="Items">That come in.</param>
/// <param name="Holds">Of these products in this mix; null where the plan does not say.</param>
/// <param name="FullAt">In ticks from the start of work; null where all find room.</param>
public sealed record DayStore(string Id, int Items, double? Holds, long? FullAt)
{
    public static IEnumerable<DayStore> Of(Plan plan, PlannedDay day)
    {
        if (day.Paced is not { } paced)
        {
            yield break;
        }

        var goesOn = paced.Line.Moves.Select(m => m.From).ToHashSet();
        for (int s = 0; s < paced.Steps.Count; s++)
        {
            if (day.Planned.Stations[s] is { Role: StationRole.Store } store && !goesOn.Contains(s))
            {
                yield return Of(plan, day, paced, store, paced.Steps[s].Items);
            }
        }
    }

    /// <summary>With one store at the end its items are those that leave the line; of several each has its share in turn.</summary>
    private static DayStore Of(Plan plan, PlannedDay day, LineOutcome paced, Station store, int items)
    {
        double share = items / (double)Math.Max(1, paced.Outs.Count);
        double?[] holds = [.. day.Planned.Products.Select(p => StepOfStation.Holds(plan, store, p.Product))];
        if (Array.Exists(holds, h => h is not > 0))
        {
            return new DayStore(store.Id, items, holds.Length == 1 ? holds[0] : null, null);
        }

        // Each item takes its part of the room: with several products they are not of one size.
        double used = 0;
        long? fullAt = null;
        for (int i = 0; i < paced.Outs.Count; i++)
        {
            used += share / holds[paced.OutProducts.Count > 0 ? paced.OutProducts[i] : 0]!.Value;
            fullAt ??= used > 1 + 1e-9 ? paced.Outs[i] : null;
        }

        return new DayStore(store.Id, items, used > 0 ? Math.Round(items / used, 6) : null, fullAt);
    }
}
