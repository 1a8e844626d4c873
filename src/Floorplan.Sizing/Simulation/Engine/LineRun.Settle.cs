using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <content>After each event: whatever can begin now begins.</content>
internal sealed partial class LineRun
{
    private void Settle()
    {
        bool more = true;
        while (more)
        {
            while (toLookCount > 0)
            {
                int s = toLook[--toLookCount];
                looked[s] = false;
                LookAt(s);
            }

            more = false;
            while (breaks == 0 && toGiveCount > 0)
            {
                var crew = crews[toGive[--toGiveCount]];
                crew.MayStart = false;
                more |= GiveWork(crew);
            }

            more |= toLookCount > 0;
        }
    }

    /// <summary>Begins what needs nobody at a step and on the ways from and to it, and tells the crews that may have work there.</summary>
    private void LookAt(int s)
    {
        var step = steps[s].Step;
        while ((step.Crew < 0 || step.Work.Mean == 0) && CanStart(s))
        {
            Start(s, -1, 0);
        }

        Tell(step.Crew);
        foreach (int m in movesFrom[s])
        {
            LookAtMove(m);
        }

        foreach (int m in movesTo[s])
        {
            LookAtMove(m);
        }

        if (record is not null)
        {
            Write(record, s);
        }
    }

    private void Write(LineRecord into, int s)
    {
        var state = steps[s];
        into.Steps.Add(new StepCount(now, s, state.Waiting, state.Going, state.Hands, state.Done, state.Started));
    }

    private void LookAtMove(int m)
    {
        var state = moves[m];
        if (state.HasCarrier)
        {
            Pile(state);
        }

        if (state.Move.Crew < 0)
        {
            while (CanGo(m))
            {
                Go(m, -1, 0);
            }
        }
        else
        {
            Tell(state.Move.Crew);
        }
    }

    /// <summary>What is done goes on the trolley that stands there.</summary>
    private void Pile(MoveState state)
    {
        var from = steps[state.Move.From];
        int items = state.Standing > 0 ? Math.Min(from.Done, state.Move.Load - state.Loaded) : 0;
        if (items > 0)
        {
            from.Take(items, now);
            state.Loaded += items;
            Look(state.Move.From);
        }
    }

    /// <summary>A crew, and those that help it, may have work.</summary>
    private void Tell(int crew)
    {
        if (crew >= 0)
        {
            TellOne(crew);
            foreach (int helper in crews[crew].Helpers)
            {
                TellOne(helper);
            }
        }
    }

    private void TellOne(int crew)
    {
        if (!crews[crew].MayStart)
        {
            crews[crew].MayStart = true;
            toGive[toGiveCount++] = crew;
        }
    }

    private bool CanStart(int s)
    {
        var state = steps[s];
        var step = state.Step;
        return state.Waiting > 0 && state.HasPlace && (state.Waiting >= step.Least || IsLast(s)) && BinsTake(s);
    }

    private bool BinsTake(int s)
    {
        var state = steps[s];
        foreach (var (bin, kilograms) in state.Step.Waste)
        {
            if (!bins[bin].Takes(kilograms * Math.Min(state.Waiting, state.Step.Batch)))
            {
                bins[bin].Wait(now);
                Tell(bins[bin].Bin.Crew);
                return false;
            }
        }

        return true;
    }

    private bool CanGo(int m)
    {
        var state = moves[m];
        var move = state.Move;
        int room = steps[move.To].Room;
        if (!state.HasCarrier)
        {
            return steps[move.From].Done > 0 && room > 0;
        }

        return state.Loaded > 0 && state.Standing > 0 && room >= state.Loaded
            && (state.Loaded >= move.Load || IsEmpty(move.From) && IsLast(move.From));
    }

    private bool IsEmpty(int s) => steps[s].Waiting == 0 && steps[s].Going == 0 && steps[s].Done == 0;

    /// <summary>Whether no more items will come to a step.</summary>
    private bool IsLast(int s)
    {
        if (s == 0)
        {
            return supplied == line.Supply.Items;
        }

        foreach (int m in movesTo[s])
        {
            int from = moves[m].Move.From;
            if (moves[m].Under > 0 || moves[m].Loaded > 0 || !IsEmpty(from) || !IsLast(from))
            {
                return false;
            }
        }

        return true;
    }
}
