using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>Whether product comes back to where it has been.</summary>
internal static class RoundTrip
{
    /// <summary>Takes steps off the front, those that nothing leads to: in a round none is left to take.</summary>
    public static bool IsIn(int steps, IReadOnlyList<LineMove> moves)
    {
        int[] into = new int[steps];
        foreach (var move in moves)
        {
            into[move.To]++;
        }

        var free = new Stack<int>(Enumerable.Range(0, steps).Where(s => into[s] == 0));
        var going = moves.ToLookup(m => m.From);
        int seen = 0;
        while (free.TryPop(out int s))
        {
            seen++;
            foreach (var move in going[s])
            {
                if (--into[move.To] == 0)
                {
                    free.Push(move.To);
                }
            }
        }

        return seen < steps;
    }
}
