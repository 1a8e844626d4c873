using Floorplan.Model.Space;
using Floorplan.Sizing.Simulation.Engine.States;
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

    /// <summary>It begins and it ends.</summary>
    private const int EventsOfRest = 2;

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
    private readonly bool[][] ends;
    private readonly LineRound round;
    private readonly int[]?[] times;
    private readonly bool[] looked;
    private readonly int[] toLook;
    private readonly int[] toGive;
    private int toLookCount;
    private int toGiveCount;
    private int outCount;
    private readonly int[] supplied;
    private readonly int[] outProducts;
    private readonly int[] outSteps;
    private bool isRelaxed;
    private LineLock? locked;
    private int breaks;
    private long restFrom;
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
        steps = [.. line.Steps.Select((_, s) => new StepState([.. line.ByProduct(p => line.StepsOf(p)[s])]))];
        moves = [.. line.Moves.Select((_, m) => new MoveState([.. line.ByProduct(p => line.MovesOf(p)[m])]))];
        bins = [.. line.Bins.Select(b => new BinState(b))];
        movesFrom = ByStep(m => m.From);
        movesTo = ByStep(m => m.To);
        ends = [.. steps.Select((_, s) => (bool[])[.. line.ByProduct(
            p => !Array.Exists(movesFrom[s], m => moves[m].Of(p) is { IsTaken: true, IsBack: false }))])];
        round = new LineRound(line, movesFrom, movesTo);
        times = ShareStations();
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
        outs = new long[line.Items];
        supplied = new int[line.Products];
        outProducts = line.Products > 1 ? new int[line.Items] : [];
        outSteps = ends.Index().Count(e => e.Index > 0 && Array.Exists(e.Item, x => x)) > 1 ? new int[line.Items] : [];
        stepsOfEvent = StepsOfWeight * line.RunWeight / Math.Max(1, (long)line.Items * line.Steps.Count);
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

    /// <summary>Steps that are one station, the last time first; null for a step that is alone.</summary>
    private int[]?[] ShareStations()
    {
        var all = new int[]?[steps.Length];
        foreach (var station in line.Steps.Index().GroupBy(s => s.Item.SameAs < 0 ? s.Index : s.Item.SameAs).Where(g => g.Count() > 1))
        {
            int[] same = [.. station.Select(s => s.Index).OrderDescending()];
            var state = new StationState([.. same.Reverse().Select(s => steps[s])]);
            foreach (int s in same)
            {
                all[s] = same;
                steps[s].Station = state;
            }
        }

        foreach (var back in line.Moves.Where(m => m.IsBack))
        {
            steps[back.To].HasOwnRoom = true;
        }

        return all;
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
            foreach (var move in line.Moves.Where(m => !m.IsBack))
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

        if (line.RestEvery > 0)
        {
            NextRest();
        }

        for (int product = 0; product < line.Products; product++)
        {
            if (line.SupplyOf(product).Items > 0)
            {
                events.Add(product == 0 ? 0 : line.Later[product - 1].From, EventKind.Arrived, 0, product: product);
            }
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

            if (IsStill(one.Kind) && inside > 0)
            {
                // What is last at a step that several feed shows only when all of them are empty.
                LookAll();
                Settle();
            }

            if (IsStill(one.Kind) && inside > 0)
            {
                // Two products that each wait for more of their own would wait for ever: what is there goes on.
                isRelaxed = true;
                LookAll();
                Settle();
                isRelaxed = false;
            }

            if (IsStill(one.Kind) && inside > 0)
            {
                locked = new LockFinder(line, steps, moves, movesFrom, times).Find(now);
                break;
            }
        }

        Inside(0);
        foreach (var step in steps)
        {
            step.Pass(now);
        }
    }

    /// <summary>Nothing will happen any more, but for the next rest.</summary>
    private bool IsStill(EventKind last)
        => events.IsEmpty || (events.Count == EventsOfRest && line.RestEvery > 0 && breaks == 0 && last == EventKind.BreakEnded);

    private void Look(int step)
    {
        if (times[step] is not { } same)
        {
            LookOne(step);
            return;
        }

        // What is put down last is looked at first: those who are there for the last time.
        for (int i = same.Length - 1; i >= 0; i--)
        {
            LookOne(same[i]);
        }
    }

    private void LookOne(int step)
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
