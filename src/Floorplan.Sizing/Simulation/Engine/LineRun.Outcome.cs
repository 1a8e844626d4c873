using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <content>What the run came to, and whether it adds up.</content>
internal sealed partial class LineRun
{
    private LineOutcome Outcome()
    {
        Prove();
        return new LineOutcome(
            line, now, eventCount, [.. outs.AsSpan(0, outCount)], insideTime,
            [.. steps.Select(s => new StepOutcome(
                s.Step.Title, s.Started, s.MostWaiting, s.MostHere, s.WaitingTime, s.GoingTime, s.HandsTime, s.BlockedTime))],
            [.. moves.Select(m => new MoveOutcome(m.Trips, m.Items))],
            [.. people.Select(p => new PersonOutcome(
                p.Crew, p.Working, p.Carrying, p.Walking, p.Emptying, p.Washing, now - p.Busy, p.Until, p.Metres, p.Trips))],
            [.. bins.Select(b => new BinOutcome(b.Bin, b.Sum, b.Emptied, b.FullAt))], outProducts)
        {
            OutSteps = outSteps,
            Locked = locked,
        };
    }

    /// <summary>Items and people's time are neither made nor lost. If they were, it would be our fault, not that of the plan.</summary>
    private void Prove()
    {
        if (locked is not null)
        {
            return;
        }

        if (inside != 0 || outCount != line.Items || supplied.Sum() != line.Items)
        {
            throw new InvalidOperationException($"{line.Items} items came to the line, {outCount} left it, {inside} are in it");
        }

        // Little 1961: the items inside, summed over time, are the times of all items inside, summed over items.
        if (insideTime != left - came)
        {
            throw new InvalidOperationException($"{insideTime} item-ticks inside are not {left - came}");
        }

        foreach (var person in people)
        {
            if (person.Busy > now)
            {
                throw new InvalidOperationException("somebody worked for longer than the day");
            }
        }
    }
}
