using Floorplan.Model.Space;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <summary>
/// One run of a line, from the first arrival until nothing moves any more. What a person could do at the place where they are comes
/// first; else what is farthest down the line, so that nothing is blocked for longer than need be. Nothing that has begun is broken off.
/// </summary>
/// <remarks>The same line and seed give the same run. Work is by events; nothing is allocated for an item.</remarks>
internal sealed partial class LineRun
{
    /// <summary>What an event costs, in steps of work. Own estimate.</summary>
    private const int StepsOfWeight = 4;
    private const int CountedAtOnce = 1024;

    private readonly ProductLine line;
    private readonly StepState[] steps;
    private readonly MoveState[] moves;
    private readonly BinState[] bins;
    private readonly PersonState[] people;
    private readonly CrewJobs[] crews;
    private readonly int[][] movesFrom;
    private readonly int[][] movesTo;
    private readonly Random[] random;
    private readonly Random arrivals;
    private readonly EventQueue events = new();
    private readonly long[] outs;
    private readonly bool[] looked;
    private readonly int[] toLook;
    private readonly int[] toGive;
    private int toLookCount;
    private int toGiveCount;
    private int outCount;
    private int supplied;
    private int breaks;
    private long now;
    private readonly long stepsOfEvent;
    private readonly LineRecord? record;
    private long eventCount;
    private long inside;
    private long insideTime;
    private long insideSince;
    private long came;
    private long left;

    private LineRun(ProductLine line, int seed, LineRecord? record)
    {
        this.line = line;
        this.record = record;
        steps = [.. line.Steps.Select(s => new StepState(s))];
        moves = [.. line.Moves.Select(m => new MoveState(m))];
        bins = [.. line.Bins.Select(b => new BinState(b))];
        movesFrom = ByStep(m => m.From);
        movesTo = ByStep(m => m.To);
        int[] depth = Depths();
        crews = [.. line.Crews.Select((_, c) => new CrewJobs(line, c, depth))];
        people =
            [.. line.Crews.SelectMany((c, i) => Enumerable.Range(0, c.People).Select(n => new PersonState(i, crews[i].PlaceOf(n))))];
        for (int p = 0; p < people.Length; p++)
        {
            crews[people[p].Crew].People.Add(p);
        }

        random = [.. steps.Select((_, s) => new Random(HashCode(seed, s)))];
        arrivals = new Random(HashCode(seed, -1));
        outs = new long[line.Supply.Items];
        stepsOfEvent = StepsOfWeight * line.Weight / Math.Max(1, (long)line.Supply.Items * line.Steps.Count);
        looked = new bool[steps.Length];
        toLook = new int[steps.Length];
        toGive = new int[crews.Length];
    }

    /// <param name="record">Where to write down what happens when; null where nobody asks.</param>
    public static LineOutcome Of(ProductLine line, int seed = 0, LineRecord? record = null)
    {
        var run = new LineRun(line, seed, record);
        run.Begin();
        run.GoOn();
        return run.Outcome();
    }

    private int[][] ByStep(Func<LineMove, int> step)
    {
        var all = Enumerable.Range(0, line.Moves.Count).ToLookup(m => step(line.Moves[m]));
        return [.. Enumerable.Range(0, line.Steps.Count).Select(s => all[s].ToArray())];
    }

    /// <summary>Unlike that of the library, the same in every process.</summary>
    private static int HashCode(int seed, int stream) => unchecked((seed * 486_187_739) + ((stream + 2) * 1_000_003));

    /// <summary>How many moves a step is from the end of the line, at most.</summary>
    private int[] Depths()
    {
        int[] depth = new int[steps.Length];
        for (int round = 0; round < steps.Length; round++)
        {
            bool changed = false;
            foreach (var move in line.Moves)
            {
                if (depth[move.From] < depth[move.To] + 1 && depth[move.To] < steps.Length)
                {
                    depth[move.From] = depth[move.To] + 1;
                    changed = true;
                }
            }

            if (!changed)
            {
                break;
            }
        }

        return depth;
    }

    private void Begin()
    {
        foreach (var pause in line.Breaks)
        {
            events.Add(pause.From, EventKind.BreakBegan, 0);
            events.Add(pause.To, EventKind.BreakEnded, 0);
        }

        if (line.Supply.Items > 0)
        {
            events.Add(0, EventKind.Arrived, 0);
        }
    }

    private void GoOn()
    {
        while (!events.IsEmpty)
        {
            var one = events.Take();
            now = one.At;
            Happen(one);
            Settle();
            if (++eventCount % CountedAtOnce == 0)
            {
                Steps.Take(CountedAtOnce * stepsOfEvent);
            }

            if (events.IsEmpty && inside > 0)
            {
                // What is last at a step that several feed shows only when all of them are empty.
                LookAll();
                Settle();
            }
        }

        Inside(0);
        foreach (var step in steps)
        {
            step.Pass(now);
        }
    }

    private void Happen(in LineEvent one)
    {
        switch (one.Kind)
        {
            case EventKind.Arrived:
                Arrive();
                break;
            case EventKind.Worked:
                steps[one.What].HandsOff(now);
                Free(one.Person);
                StayOrFinish(one.What, one.Items);
                break;
            case EventKind.Stayed:
                Finish(one.What, one.Items);
                break;
            case EventKind.Delivered:
                Deliver(one);
                break;
            case EventKind.Returned:
                moves[one.What].Standing++;
                Free(one.Person);
                Look(moves[one.What].Move.From);
                break;
            case EventKind.Emptied:
                bins[one.What].Empty();
                record?.Bins.Add(new BinLevel(now, one.What, 0));
                Free(one.Person);
                LookAll();
                break;
            case EventKind.BreakBegan:
                breaks++;
                break;
            default:
                breaks--;
                foreach (var person in people)
                {
                    person.MustWash = true;
                }

                LookAll();
                break;
        }
    }

    private void Arrive()
    {
        int items = Math.Min(line.Supply.Load, line.Supply.Items - supplied);
        if (line.Supply.Every.Mean == 0)
        {
            items = line.Supply.Items - supplied;
        }

        supplied += items;
        Inside(items);
        came += now * items;
        steps[0].Come(items, now, wereExpected: false);
        Look(0);
        if (supplied < line.Supply.Items)
        {
            events.Add(now + line.Supply.Every.Draw(arrivals), EventKind.Arrived, 0);
        }
    }

    private void StayOrFinish(int s, int items)
    {
        var stay = steps[s].Step.Stay;
        if (stay.Mean > 0)
        {
            events.Add(now + stay.Draw(random[s]), EventKind.Stayed, s, -1, items);
            Look(s);
        }
        else
        {
            Finish(s, items);
        }
    }

    private void Finish(int s, int items)
    {
        steps[s].Finish(items, now);
        if (movesFrom[s].Length == 0)
        {
            Leave(s, items);
        }

        Look(s);
    }

    /// <summary>The end of the line: a store keeps what comes to it.</summary>
    private void Leave(int s, int items)
    {
        steps[s].Take(items, now);
        Inside(-items);
        left += now * items;
        for (int i = 0; i < items; i++)
        {
            outs[outCount++] = now;
        }
    }

    private void Inside(int more)
    {
        insideTime += (now - insideSince) * inside;
        insideSince = now;
        inside += more;
    }

    private void Deliver(in LineEvent one)
    {
        var state = moves[one.What];
        var move = state.Move;
        state.Under -= one.Items;
        steps[move.To].Come(one.Items, now, wereExpected: true);
        if (one.Person >= 0)
        {
            people[one.Person].At = move.To;
        }

        if (!state.HasCarrier)
        {
            Free(one.Person);
        }
        else if (one.Person >= 0)
        {
            people[one.Person].Carrying += move.Back;
            people[one.Person].Metres += move.Metres;
            people[one.Person].At = move.From;
            record?.People.Add(
                new PersonSpan(one.Person, PersonDoes.BringBack, now, now + move.Back, move.To, move.From, one.What));
            long wash = line.IsIntoAnotherRoom(move.To, move.From) ? Wash(one.Person, now + move.Back) : 0;
            events.Add(now + move.Back + wash, EventKind.Returned, one.What, one.Person);
        }
        else
        {
            events.Add(now + move.Back, EventKind.Returned, one.What);
        }

        Look(move.To);
        Look(move.From);
    }

    private void Free(int person)
    {
        if (person >= 0)
        {
            people[person].IsBusy = false;
            people[person].Until = now;
            Tell(people[person].Crew);
        }
    }

    private void Look(int step)
    {
        if (!looked[step])
        {
            looked[step] = true;
            toLook[toLookCount++] = step;
        }
    }

    private void LookAll()
    {
        for (int s = 0; s < steps.Length; s++)
        {
            Look(s);
        }

        for (int c = crews.Length - 1; c >= 0; c--)
        {
            Tell(c);
        }
    }
}
