using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>
/// One run of the day at the pace of the target as charts show it. A day has thousands of stretches of work that no printed line is thin
/// enough for, so they are summed up by slots of a few minutes: a reader sees at a glance how busy somebody is at each hour, and where that
/// changes.
/// </summary>
/// <param name="Slot">How long a slot is, in ticks.</param>
/// <param name="End">When the work day and the last item are over.</param>
/// <param name="Output">Items that are out, by time.</param>
/// <param name="Fills">What fills up.</param>
public sealed record DayInTime(
    long Slot, long End, IReadOnlyList<DayLane> People, IReadOnlyList<DayLane> Stations, DayCurve Output, IReadOnlyList<DayCurve> Fills)
{
    /// <summary>As many as a page is wide for, at 5 mm each; own choice.</summary>
    private const int MostSlots = 72;

    /// <summary>Minutes that people count in; own choice.</summary>
    private static readonly int[] Minutes = [1, 2, 5, 10, 15, 30, 60, 120, 240];

    /// <summary>Null where the day cannot be run.</summary>
    internal static DayInTime? Of(PlanFacts facts)
    {
        if (facts.RecordedDay is not { } day)
        {
            return null;
        }

        var (outcome, record) = day;
        long end = Math.Max(Ticks.Minute, Math.Max(outcome.End, facts.Day.Planned.Work));
        long slot = SlotOf(end);
        return new DayInTime(
            slot, end, PersonLanes.Of(outcome, record, slot, end),
            StationLanes.Of(facts.Day.Planned, outcome, record, slot, end), Out(facts.Day.Planned, outcome, end),
            DayCurves.Of(facts, outcome, record, end));
    }

    private static long SlotOf(long end)
    {
        foreach (int minutes in Minutes)
        {
            if (SlotSums.Count(minutes * Ticks.Minute, end) <= MostSlots)
            {
                return minutes * Ticks.Minute;
            }
        }

        return Math.Max(1, (end + MostSlots - 1) / MostSlots);
    }

    private static DayCurve Out(PlannedLine planned, LineOutcome outcome, long end)
    {
        var points = outcome.Outs.Index().GroupBy(o => o.Item).Select(g => (g.Key, g.Last().Index + 1.0)).Prepend((0, 0)).ToList();
        var few = DayCurve.Few([.. points.DistinctBy(p => p.Item1)], end, MostSlots * 4);
        return new DayCurve(DayCurveKind.Store, "", planned.Things, planned.Items, null, few);
    }
}
