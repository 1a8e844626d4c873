namespace Floorplan.Sizing.Simulation.Line;

/// <summary>A way that items take from one step to the next.</summary>
/// <param name="From">Index of the step.</param>
/// <param name="To">Index of the step.</param>
public sealed record LineMove(int From, int To)
{
    /// <summary>Whether the product goes this way at all.</summary>
    public bool IsTaken { get; init; } = true;

    /// <summary>The way of those that are worked on a second time, and of no others.</summary>
    public bool IsBack { get; init; }

    /// <summary>Items of one trip. Those of more than one collect on what carries them, and free their place.</summary>
    public int Load { get; init; } = 1;

    /// <summary>Trolleys or tubs; of loads of more than one item.</summary>
    public int Carriers { get; init; } = 1;

    /// <summary>The way there with a load.</summary>
    public long There { get; init; }

    /// <summary>The way back with the empty trolley; hands alone walk back when they are needed.</summary>
    public long Back { get; init; }

    /// <summary>Which crew carries; -1 where nobody is needed: chutes, belts.</summary>
    public int Crew { get; init; } = -1;

    /// <summary>In metres, one way, for the sums of walking.</summary>
    public double Metres { get; init; }
}
