using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>The lanes of the stations, in the order of the line. A store that only keeps what comes has a curve and no lane.</summary>
internal static class StationLanes
{
    public static IReadOnlyList<DayLane> Of(PlannedLine planned, LineOutcome outcome, LineRecord record, long slot, long end)
    {
        var counts = record.Steps.ToLookup(c => c.Step);
        var works = outcome.Line.Steps.Index().Where(s => planned.Stations[s.Index] is not null && s.Item.SameAs < 0 && Works(s.Item));
        return [.. works.Select(s =>
        {
            var sums = new SlotSums(slot, end);
            long since = 0;
            var state = DayState.Starved;
            foreach (var count in counts[s.Index])
            {
                sums.Add(state, since, count.At);
                (since, state) = (count.At, State(s.Item, count));
            }

            sums.Add(state, since, outcome.End);
            return new DayLane("", s.Item.Name, sums.Shares(DayState.Starved));
        })];
    }

    private static bool Works(LineStep step) => step.Places != LineStep.Unlimited || step.Work.Mean > 0;

    /// <summary>Fewer items than begin a job wait for more of them, not for hands.</summary>
    private static DayState State(LineStep step, StepCount count) => count switch
    {
        { Hands: > 0 } => DayState.ByHand,
        { Going: > 0 } => DayState.ByItself,
        { Done: > 0 } => DayState.Blocked,
        _ when count.Waiting >= step.Least => DayState.NoHands,
        _ => DayState.Starved,
    };
}
