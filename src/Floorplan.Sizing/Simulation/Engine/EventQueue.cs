namespace Floorplan.Sizing.Simulation.Engine;

/// <summary>What happens when, earliest first; of two at one time the one that was added first.</summary>
internal sealed class EventQueue
{
    private readonly PriorityQueue<LineEvent, EventPlace> queue = new(64);
    private long added;

    public bool IsEmpty => queue.Count == 0;

    public int Count => queue.Count;

    public void Add(long at, EventKind kind, int what, int person = -1, int items = 0, int product = 0)
        => queue.Enqueue(new LineEvent(at, kind, what, person, items, product), new EventPlace(at, added++));

    public LineEvent Take() => queue.Dequeue();

    private readonly record struct EventPlace(long At, long Order) : IComparable<EventPlace>
    {
        public int CompareTo(EventPlace other) => At != other.At ? At.CompareTo(other.At) : Order.CompareTo(other.Order);
    }
}

/// <param name="What">Index of the step, move or bin.</param>
/// <param name="Person">Who is busy with it; -1 for nobody.</param>
/// <param name="Product">Of what arrives, is worked on or is carried.</param>
internal readonly record struct LineEvent(long At, EventKind Kind, int What, int Person, int Items, int Product);

internal enum EventKind
{
    /// <summary>Items come in.</summary>
    Arrived,

    /// <summary>Hands are done with the items of a job.</summary>
    Worked,

    /// <summary>A job has stayed its time.</summary>
    Stayed,

    /// <summary>A load is there.</summary>
    Delivered,

    /// <summary>An empty trolley is back.</summary>
    Returned,

    /// <summary>A bin is empty again.</summary>
    Emptied,

    /// <summary>Somebody has had the rest of a break.</summary>
    Rested,

    BreakBegan,
    BreakEnded,
}
