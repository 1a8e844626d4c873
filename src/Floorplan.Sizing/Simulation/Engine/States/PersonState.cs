namespace Floorplan.Sizing.Simulation.Engine.States;

/// <summary>Where somebody is and what the time went into.</summary>
internal sealed class PersonState(int crew, int at)
{
    public int Crew => crew;

    /// <summary>Index of the step.</summary>
    public int At { get; set; } = at;

    public bool IsBusy { get; set; }

    public long Working { get; set; }

    /// <summary>With a load, and back with what carried it.</summary>
    public long Carrying { get; set; }

    /// <summary>With empty hands.</summary>
    public long Walking { get; set; }

    public long Emptying { get; set; }

    public long Washing { get; set; }

    /// <summary>Hands are to be washed before the next work: at the start and after a break.</summary>
    public bool MustWash { get; set; } = true;

    /// <summary>Of a break that began while this person was at work.</summary>
    public long RestOwed { get; set; }

    /// <summary>When the last thing was done.</summary>
    public long Until { get; set; }

    /// <summary>All that is not waiting.</summary>
    public long Busy => Working + Carrying + Walking + Emptying + Washing;

    public double Metres { get; set; }

    public int Trips { get; set; }
}
