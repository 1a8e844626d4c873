using Floorplan.Sizing.Simulation.Engine.States;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <summary>Why nothing moves any more, though items are inside: follows what waits for what until it comes round.</summary>
internal sealed class LockFinder(ProductLine line, StepState[] steps, MoveState[] moves, int[][] movesFrom, int[]?[] times)
{
    public LineLock Find(long now)
    {
        var ring = Enumerable.Range(0, steps.Length).Where(s => Next(s) >= 0).Select(RingFrom).FirstOrDefault(r => r.Count > 0)
            ?? [.. Enumerable.Range(0, steps.Length).Where(s => steps[s].Here > 0)];

        // Room helps where items come that have been there before.
        int wait = ring.FirstOrDefault(s => line.Steps[s].SameAs >= 0, ring.FirstOrDefault(IsSentBackTo, ring.FirstOrDefault()));
        return new LineLock(now, ring, wait, (int)Math.Min(int.MaxValue / 2, ring.Where(s => s != wait).Sum(ItemsOf)));
    }

    private bool IsSentBackTo(int s) => line.Moves.Any(m => m.IsBack && m.To == s);

    private List<int> RingFrom(int first)
    {
        var seen = new List<int>();
        int s = first;
        while (s >= 0 && !seen.Contains(s))
        {
            seen.Add(s);
            s = Next(s);
        }

        return s < 0 ? [] : seen[seen.IndexOf(s)..];
    }

    /// <summary>The step that what is done here waits for, or that holds the places of this one; -1 for none.</summary>
    private int Next(int s)
    {
        foreach (int m in movesFrom[s])
        {
            var state = moves[m];
            if (state.Loaded > 0 || Enumerable.Range(0, line.Products).Any(p => state.Ready(steps[s], p) > 0))
            {
                return state.Move.To;
            }
        }

        return (times[s] ?? []).FirstOrDefault(t => t != s && steps[t].Done > 0, -1);
    }

    /// <summary>All that finds room at a step and on its ways on.</summary>
    private long ItemsOf(int s)
    {
        var step = line.Steps[s];
        long places = step.Places == LineStep.Unlimited ? 0 : (long)step.Places * step.Batch;
        return places + step.Waits + movesFrom[s].Sum(m => line.Moves[m].Load > 1 ? line.Moves[m].Load : 0L);
    }
}
