using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Engine;

/// <summary>What is at a step of one product.</summary>
internal sealed class ProductAtStep(LineStep step)
{
    /// <summary>Sizes of the jobs that are done and still in their places, in the order that they were done.</summary>
    private readonly Queue<int> done = new();
    private int takenOfFirst;

    public LineStep Step => step;

    /// <summary>Items that find room if nothing else is there.</summary>
    public long Whole { get; } = step.Waits + ((long)step.Places * step.Batch);

    public int Waiting { get; set; }

    /// <summary>Items on their way here, for which room is kept.</summary>
    public int Coming { get; set; }

    public int Taken { get; set; }

    public int Going { get; set; }

    /// <summary>Items so far.</summary>
    public int Started { get; set; }

    public int Done { get; private set; }

    public bool IsEmpty => Waiting == 0 && Going == 0 && Done == 0;

    public void Finish(int items)
    {
        Going--;
        Done += items;
        done.Enqueue(items);
    }

    /// <returns>How many places are free by it.</returns>
    public int Take(int items)
    {
        Done -= items;
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
