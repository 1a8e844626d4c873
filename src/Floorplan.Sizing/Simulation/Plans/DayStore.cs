using Floorplan.Model;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>A store at the end of the line and what comes into it in a day at the pace of the target.</summary>
/// <param name="Items">That come in.</param>
/// <param name="Holds">Null where the plan does not say.</param>
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
                int items = paced.Steps[s].Items;
                double? holds = PlannedLine.InItems(store.Holds, plan);

                // With one store at the end its items are those that leave the line; of several each has its share in turn.
                int full = holds is { } most && most < items ? (int)Math.Floor(most * paced.Outs.Count / items) : -1;
                yield return new DayStore(store.Id, items, holds, full >= 0 ? paced.Outs[Math.Min(full, paced.Outs.Count - 1)] : null);
            }
        }
    }
}
