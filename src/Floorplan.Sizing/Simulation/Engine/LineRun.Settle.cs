using Floorplan.Sizing.Simulation.Engine.States;
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
        while (Startable(s, byHand: false) is >= 0 and var product)
        {
            Start(s, product, -1, 0);
        }

        Tell(steps[s].Crew);
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
        if (times[s] is not { } same)
        {
            var state = steps[s];
            into.Steps.Add(new StepCount(now, s, state.Waiting, state.Going, state.Hands, state.Done, state.Started, state.Here));
            return;
        }

        // One station is one station, how often the product may come to it.
        int Sum(Func<StepState, int> of) => same.Sum(t => of(steps[t]));
        into.Steps.Add(new StepCount(
            now, same[^1], Sum(t => t.Waiting), Sum(t => t.Going), Sum(t => t.Hands), Sum(t => t.Done), Sum(t => t.Started),
            Sum(t => t.Here)));
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
            while (ToGo(m) is >= 0 and var product)
            {
                Go(m, product, -1, 0);
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
        if (state.Standing == 0 || from.Done == 0)
        {
            return;
        }

        if (state.Loaded == 0)
        {
            if (FirstReady(state, from) is not (>= 0 and var first))
            {
                return;
            }

            state.Product = first;
        }

        int items = Math.Min(state.Ready(from, state.Product), state.Of(state.Product).Load - state.Loaded);
        if (items > 0)
        {
            from.Take(state.Product, items, now, state.Move.IsBack);
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

    /// <summary>The first product that is done and goes this way; -1 for none.</summary>
    private static int FirstReady(MoveState move, StepState from)
    {
        for (int product = 0; product < from.Products; product++)
        {
            if (move.Ready(from, product) > 0)
            {
                return product;
            }
        }

        return -1;
    }

    /// <summary>The first product of which a job may begin at a step; -1 for none.</summary>
    /// <param name="byHand">Only what needs a person, or only what needs none.</param>
    private int Startable(int s, bool byHand)
    {
        var state = steps[s];
        for (int product = 0; state.Waiting > 0 && product < state.Products; product++)
        {
            int waiting = state.At(product).Waiting;
            if (waiting > 0 && state.NeedsHands(product) == byHand && state.HasPlace(product)
                && (waiting >= state.Of(product).Least || isRelaxed || IsLast(s, product)) && BinsTake(state, product, byHand))
            {
                return product;
            }
        }

        return -1;
    }

    /// <summary>A crew that looks for work tells itself once of a full bin: told at every look, it would never stop looking.</summary>
    private bool BinsTake(StepState state, int product, bool byHand)
    {
        var step = state.Of(product);
        foreach (var (bin, kilograms) in step.Waste)
        {
            if (!bins[bin].Takes(kilograms * Math.Min(state.At(product).Waiting, step.Batch)))
            {
                bool isKnown = byHand && bins[bin].IsWaitedFor;
                bins[bin].Wait(now);
                if (!isKnown)
                {
                    Tell(bins[bin].Bin.Crew);
                }

                return false;
            }
        }

        return true;
    }

    /// <summary>The product of which a load may set out; -1 for none.</summary>
    private int ToGo(int m)
    {
        var state = moves[m];
        var from = steps[state.Move.From];
        var to = steps[state.Move.To];
        if (state.HasCarrier)
        {
            int on = state.Product;
            bool goes = state.Loaded > 0 && state.Standing > 0 && to.Room(on) >= state.Loaded
                && (state.Loaded >= state.Of(on).Load || isRelaxed || from.At(on).IsEmpty && IsLast(state.Move.From, on, m));
            return goes ? on : -1;
        }

        for (int product = 0; from.Done > 0 && product < from.Products; product++)
        {
            if (state.Ready(from, product) > 0 && (state.Move.IsBack ? to.At(product).BackRoom : to.Room(product)) > 0)
            {
                return product;
            }
        }

        return -1;
    }

    /// <summary>Whether no more items of a product will come to a step.</summary>
    /// <param name="but">A load that does not count, since it is asked for.</param>
    private bool IsLast(int s, int product, int but = -1)
    {
        if (round.Has(s))
        {
            return round.IsLast(s, but, steps, moves, product) && supplied[product] == line.SupplyOf(product).Items;
        }

        if (s == 0)
        {
            return supplied[product] == line.SupplyOf(product).Items;
        }

        foreach (int m in movesTo[s])
        {
            var state = moves[m];
            int from = state.Move.From;
            if (!state.Of(product).IsTaken)
            {
                continue;
            }

            if (state.Under(product) > 0 || (state.Loaded > 0 && state.Product == product) || !steps[from].At(product).IsEmpty
                || !IsLast(from, product))
            {
                return false;
            }
        }

        return true;
    }
}
