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

        bool isOnly = paced.OutSteps.Count == 0;
        var ends = isOnly ? EndsOf(paced.Line) : paced.OutSteps.ToHashSet();
        for (int s = 0; s < paced.Steps.Count; s++)
        {
            if (day.Planned.Stations[s] is { Role: StationRole.Store } store && ends.Contains(s))
            {
                yield return Of(plan, day, paced, store, s);
            }
        }
    }

    private static HashSet<int> EndsOf(ProductLine line)
        => [.. Enumerable.Range(0, line.Steps.Count).Except(line.Moves.Where(m => !m.IsBack).Select(m => m.From))];

    /// <summary>Its items are those that leave the line there.</summary>
    private static DayStore Of(Plan plan, PlannedDay day, LineOutcome paced, Station store, int step)
    {
        List<int> outs = [.. Enumerable.Range(0, paced.Outs.Count).Where(i => paced.OutSteps.Count == 0 || paced.OutSteps[i] == step)];
        int items = outs.Count;
        double?[] holds = [.. day.Planned.Products.Select(p => StepOfStation.Holds(plan, store, p.Product))];
        var comes = outs.Select(ProductOf).ToHashSet();
        if (comes.Any(p => holds[p] is not > 0))
        {
            return new DayStore(store.Id, items, holds.Length == 1 ? holds[0] : null, null);
        }

        // Each item takes its part of the room: with several products they are not of one size.
        double used = 0;
        long? fullAt = null;
        foreach (int i in outs)
        {
            used += 1 / holds[ProductOf(i)]!.Value;
            fullAt ??= used > 1 + 1e-9 ? paced.Outs[i] : null;
        }

        return new DayStore(store.Id, items, used > 0 ? Math.Round(items / used, 6) : null, fullAt);

        int ProductOf(int item) => paced.OutProducts.Count > 0 ? paced.OutProducts[item] : 0;
    }
}
