namespace Floorplan.Sizing.Simulation.Line;

/// <summary>People who share their work.</summary>
public sealed record LineCrew(string Name, int People)
{
    /// <summary>Indices of the crews that they help when they have nothing to do, first those that come first.</summary>
    public IReadOnlyList<int> Helps { get; init; } = [];
}

/// <summary>A bin, and how it is emptied.</summary>
/// <param name="Kilograms">What it holds.</param>
public sealed record LineBin(string Name, double Kilograms)
{
    /// <summary>Which crew empties it when it is full; -1 where that waits until after work.</summary>
    public int Crew { get; init; } = -1;

    /// <summary>There, emptied, and back.</summary>
    public long Trip { get; init; }

    /// <summary>The step that people go to it from.</summary>
    public int Near { get; init; }

    /// <summary>One way, for the sums of walking.</summary>
    public double Metres { get; init; }
}

/// <summary>What comes in during the day, to step 0.</summary>
/// <param name="Items">In all.</param>
/// <param name="Every">From one arrival to the next; none brings all at once.</param>
public sealed record LineSupply(int Items, TaskTime Every, int Load = 1);

/// <summary>Nobody works from one time to the other, counted from the start of work.</summary>
public sealed record LineBreak(long From, long To);
