namespace Floorplan.Sizing.Simulation.Engine;

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

    public double Metres { get; set; }

    public int Trips { get; set; }
}
