using Floorplan.Sizing.Simulation.Engine.States;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <summary>Steps that items are sent back over: what comes to them may come again.</summary>
internal sealed class LineRound
{
    private readonly int[][] movesTo;
    private readonly ProductLine line;
    private readonly bool[] isIn;
    private readonly bool[] seen;
    private readonly Stack<int> open = new();

    public LineRound(ProductLine line, int[][] movesFrom, int[][] movesTo)
    {
        this.line = line;
        this.movesTo = movesTo;
        isIn = new bool[line.Steps.Count];
        seen = new bool[line.Steps.Count];
        foreach (var back in line.Moves.Where(m => m.IsBack))
        {
            bool[] after = Reach(back.To, s => movesFrom[s].Select(m => line.Moves[m].To));
            bool[] before = Reach(back.From, s => movesTo[s].Select(m => line.Moves[m].From));
            for (int s = 0; s < isIn.Length; s++)
            {
                isIn[s] |= after[s] && before[s];
            }
        }
    }

    public bool Has(int s) => isIn[s];

    /// <summary>Whether all that is before a step in the round, and before the round, is empty: what waits there is the last.</summary>
    /// <param name="but">A load that does not count; -1 for none.</param>
    public bool IsLast(int s, int but, StepState[] steps, MoveState[] moves, int product)
    {
        if (steps[s].At(product) is not { Going: 0, Done: 0 })
        {
            return false;
        }

        Array.Clear(seen);
        open.Clear();
        seen[s] = true;
        open.Push(s);
        while (open.TryPop(out int step))
        {
            foreach (int m in movesTo[step].Where(m => m != but && moves[m].Of(product).IsTaken))
            {
                var state = moves[m];
                int from = line.Moves[m].From;
                if (state.Under(product) > 0 || (state.Loaded > 0 && state.Product == product)
                    || (from != s && !steps[from].At(product).IsEmpty))
                {
                    return false;
                }

                if (!seen[from])
                {
                    seen[from] = true;
                    open.Push(from);
                }
            }
        }

        return true;
    }

    private bool[] Reach(int from, Func<int, IEnumerable<int>> next)
    {
        bool[] reached = new bool[isIn.Length];
        var open = new Stack<int>([from]);
        reached[from] = true;
        while (open.TryPop(out int s))
        {
            foreach (int to in next(s).Where(t => !reached[t]))
            {
                reached[to] = true;
                open.Push(to);
            }
        }

        return reached;
    }
}
