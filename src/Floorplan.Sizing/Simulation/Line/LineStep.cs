namespace Floorplan.Sizing.Simulation.Line;

/// <summary>
/// A station as the day sees it. Items come in, wait, get a place, are worked on by hands, stay, and keep their place until they are
/// taken away.
/// </summary>
public sealed record LineStep
{
    /// <summary>As many as there are.</summary>
    public const int Unlimited = int.MaxValue;

    public required string Name { get; init; }

    /// <summary>
    /// Index of the step that is the first time at this station, where the product comes to it again; -1 for that first time itself. The
    /// places and hands are those of the station; each time has room of its own to wait.
    /// </summary>
    public int SameAs { get; init; } = -1;

    /// <summary>Which time it is: 1, 2.</summary>
    public int Time { get; init; } = 1;

    /// <summary><c>bench</c>, or <c>bench, time 2</c>.</summary>
    public string Title => Time > 1 ? FormattableString.Invariant($"{Name}, time {Time}") : Name;

    /// <summary>How many jobs at a time: hooks of a rail, places of a rack, machines.</summary>
    public int Places { get; init; } = 1;

    /// <summary>Items of one job.</summary>
    public int Batch { get; init; } = 1;

    /// <summary>So many items start a job; when no more come, what is there starts one.</summary>
    public int Least { get; init; } = 1;

    /// <summary>By hand, for each item of a job.</summary>
    public TaskTime Work { get; init; }

    /// <summary>Hands stop so long after every <see cref="PauseEvery"/> items: to change a knife.</summary>
    public long Pause { get; init; }

    /// <summary>0 where there is no such pause.</summary>
    public int PauseEvery { get; init; }

    /// <summary>Share of the items that are worked on a second time, spread evenly; 0 to 1.</summary>
    public double Rework { get; init; }

    /// <summary>Share of the items that are sent back from here, by the way that is <see cref="LineMove.IsBack"/>; 0 to below 1.</summary>
    public double SentBack { get; init; }

    /// <summary>After that, for the whole job, without hands: a cycle of a machine, a stay in a tank.</summary>
    public TaskTime Stay { get; init; }

    /// <summary>So long it takes, at the first job, to set the step from another product to this one.</summary>
    public long ChangeOver { get; init; }

    /// <summary>Room for items that wait before they get a place.</summary>
    public int Waits { get; init; }

    /// <summary>How many people can work at it at a time.</summary>
    public int Hands { get; init; } = 1;

    /// <summary>Which crew works at it; -1 where it runs by itself.</summary>
    public int Crew { get; init; } = -1;

    /// <summary>Waste of each item, kg, by bin; empty where there is none.</summary>
    public IReadOnlyList<(int Bin, double Kilograms)> Waste { get; init; } = [];
}
