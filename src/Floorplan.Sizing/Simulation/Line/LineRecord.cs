namespace Floorplan.Sizing.Simulation.Line;

/// <summary>What happened when on a line, in the order in which it began: for charts and moving pictures. All times in ticks.</summary>
public sealed class LineRecord
{
    /// <summary>What each person did; between two spans a person waits, or all rest.</summary>
    public List<PersonSpan> People { get; } = [];

    /// <summary>What is at a step, each time that it changed.</summary>
    public List<StepCount> Steps { get; } = [];

    public List<BinLevel> Bins { get; } = [];

    /// <summary>Loads on their way.</summary>
    public List<LineTrip> Trips { get; } = [];
}

/// <param name="Person">Index in the outcome's people.</param>
/// <param name="At">The step where it begins.</param>
/// <param name="To">The step where it ends; the same as <paramref name="At"/> but for ways.</param>
/// <param name="What">Index of the move that is carried on, of the bin that is emptied; else -1.</param>
public readonly record struct PersonSpan(int Person, PersonDoes Does, long From, long Until, int At, int To, int What = -1);

/// <summary>What people do.</summary>
public enum PersonDoes
{
    Work,

    /// <summary>With a load.</summary>
    Carry,

    /// <summary>With an empty trolley or tub, back to where it is loaded.</summary>
    BringBack,

    /// <summary>With empty hands.</summary>
    Walk,

    /// <summary>Hands, on the way into a room.</summary>
    Wash,

    /// <summary>To a bin, tipping it out, and back.</summary>
    Empty,
}

/// <param name="Waiting">Items that wait for a place.</param>
/// <param name="Going">Jobs that are worked on or stay.</param>
/// <param name="Hands">People at work here or on their way to it.</param>
/// <param name="Done">Items that are done and not taken on yet.</param>
/// <param name="Started">Items so far.</param>
/// <param name="Here">Items that wait or are in places; none at the end of the line, where what is done has left it.</param>
public readonly record struct StepCount(long At, int Step, int Waiting, int Going, int Hands, int Done, int Started, int Here);

public readonly record struct BinLevel(long At, int Bin, double Kilograms);

/// <param name="Person">Who carries it; -1 for nobody.</param>
public readonly record struct LineTrip(int Move, int Person, int Items, long From, long Until);
