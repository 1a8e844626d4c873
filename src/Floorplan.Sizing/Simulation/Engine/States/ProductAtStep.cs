using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine.States;

/// <summary>What is at a step of one product.</summary>
internal sealed class ProductAtStep(LineStep step)
{
    /// <summary>Sizes of the jobs that are done and still in their places, in the order that they were done.</summary>
    private readonly Queue<int> done = new();
    private int takenOfFirst;
    private int returnedHere;
    private long finished;

    public LineStep Step => step;

    /// <summary>Items that find room if nothing else is there.</summary>
    public long Whole { get; } = step.Waits + ((long)step.Places * step.Batch);

    public int Waiting { get; private set; }

    /// <summary>Items on their way here, for which room is kept.</summary>
    public int Coming { get; private set; }

    /// <summary>Of those that wait or are coming, the ones that were sent back here; they have room of their own.</summary>
    public int Returned { get; private set; }

    /// <summary>Of those that are done, the ones to be sent back.</summary>
    public int ToSendBack { get; private set; }

    public int Taken { get; private set; }

    public int Going { get; private set; }

    /// <summary>Items so far.</summary>
    public int Started { get; private set; }

    public int Done { get; private set; }

    public bool IsEmpty => Waiting == 0 && Going == 0 && Done == 0;

    /// <summary>Those that wait or are coming on the usual ways.</summary>
    public int Usual => Waiting + Coming - Returned;

    /// <summary>So many find room to wait.</summary>
    public int BackRoom => Math.Max(1, step.Waits) - Returned;

    public void Expect(int items, bool isBack)
    {
        Coming += items;
        Returned += isBack ? items : 0;
    }

    public void Come(int items, bool wereExpected, bool isBack)
    {
        Waiting += items;
        Coming -= wereExpected ? items : 0;
        returnedHere += isBack ? items : 0;
    }

    /// <summary>A job gets its place; those that were sent back come first.</summary>
    public void Start(int items)
    {
        int again = Math.Min(items, returnedHere);
        returnedHere -= again;
        Returned -= again;
        Waiting -= items;
        Taken++;
        Going++;
        Started += items;
    }

    /// <returns>How many of them are to be sent back: spread evenly.</returns>
    public int Finish(int items)
    {
        Going--;
        Done += items;
        done.Enqueue(items);
        if (step.SentBack <= 0)
        {
            return 0;
        }

        int back = (int)(Math.Floor((finished + items) * step.SentBack) - Math.Floor(finished * step.SentBack));
        finished += items;
        ToSendBack += back;
        return back;
    }

    /// <returns>How many places are free by it.</returns>
    public int Take(int items, bool isBack)
    {
        Done -= items;
        ToSendBack -= isBack ? items : 0;
        int free = 0;
        while (items > 0)
        {
            int left = done.Peek() - takenOfFirst;
            if (items < left)
            {
                takenOfFirst += items;
                break;
            }

            items -= left;
            takenOfFirst = 0;
            done.Dequeue();
            free++;
        }

        Taken -= free;
        return free;
    }
}
