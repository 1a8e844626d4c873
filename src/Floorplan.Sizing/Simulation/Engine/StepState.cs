using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <summary>What is at one step now, and what has been there so far.</summary>
internal sealed class StepState(LineStep step)
{
    /// <summary>Sizes of the jobs that are done and still in their places, in the order that they were done.</summary>
    private readonly Queue<int> done = new();
    private int takenOfFirst;
    private long since;

    public LineStep Step => step;

    /// <summary>Items that wait for a place.</summary>
    public int Waiting { get; private set; }

    /// <summary>Items on their way here, for which room is kept.</summary>
    public int Coming { get; private set; }

    /// <summary>Places with a job in them: worked on, staying, or done.</summary>
    public int Taken { get; private set; }

    /// <summary>People at work here.</summary>
    public int Hands { get; private set; }

    /// <summary>Items that are done and not taken away yet.</summary>
    public int Done { get; private set; }

    /// <summary>Jobs that are not done yet.</summary>
    public int Going { get; private set; }

    /// <summary>Items that have been started here.</summary>
    public int Started { get; private set; }

    public int MostWaiting { get; private set; }

    public int MostHere { get; private set; }

    /// <summary>Sums over time, in item- or job-ticks.</summary>
    public double WaitingTime { get; private set; }

    public double GoingTime { get; private set; }

    public double HandsTime { get; private set; }

    /// <summary>Jobs that were done and could not leave.</summary>
    public double BlockedTime { get; private set; }

    private int here;

    /// <summary>How many more items may set out for here.</summary>
    public int Room
    {
        get
        {
            long places = (long)(step.Places - Taken) * step.Batch;
            return (int)Math.Min(int.MaxValue, step.Waits + places - Waiting - Coming);
        }
    }

    public bool HasPlace => Taken < step.Places && (step.Work.Mean == 0 || step.Crew < 0 || Hands < step.Hands);

    public void Expect(int items) => Coming += items;

    public void Come(int items, long now, bool wereExpected)
    {
        Pass(now);
        Waiting += items;
        here += items;
        MostWaiting = Math.Max(MostWaiting, Waiting);
        MostHere = Math.Max(MostHere, here);
        Coming -= wereExpected ? items : 0;
    }

    /// <summary>A job gets its place.</summary>
    public void Start(int items, long now, bool byHand)
    {
        Pass(now);
        Waiting -= items;
        Taken++;
        Going++;
        Started += items;
        Hands += byHand ? 1 : 0;
    }

    public void HandsOff(long now)
    {
        Pass(now);
        Hands--;
    }

    public void Finish(int items, long now)
    {
        Pass(now);
        Going--;
        Done += items;
        done.Enqueue(items);
    }

    /// <summary>Takes items away that are done; a place is free when its whole job is gone.</summary>
    public void Take(int items, long now)
    {
        Pass(now);
        Done -= items;
        here -= items;
        while (items > 0)
        {
            int left = done.Peek() - takenOfFirst;
            if (items < left)
            {
                takenOfFirst += items;
                return;
            }

            items -= left;
            takenOfFirst = 0;
            done.Dequeue();
            Taken--;
        }
    }

    /// <summary>Adds up to now; before every change.</summary>
    public void Pass(long now)
    {
        double time = now - since;
        if (time > 0)
        {
            WaitingTime += time * Waiting;
            GoingTime += time * Going;
            HandsTime += time * Hands;
            BlockedTime += time * (Taken - Going);
            since = now;
        }
    }
}
