namespace Floorplan.Sizing.Simulation.Line;

/// <summary>
/// A line with its people, as the simulation runs it. Step 0 is where items come from; steps without a way on are where they end.
/// </summary>
public sealed record ProductLine
{
    public required IReadOnlyList<LineStep> Steps { get; init; }

    public required IReadOnlyList<LineMove> Moves { get; init; }

    public IReadOnlyList<LineCrew> Crews { get; init; } = [];

    public IReadOnlyList<LineBin> Bins { get; init; } = [];

    public IReadOnlyList<LineBreak> Breaks { get; init; } = [];

    public required LineSupply Supply { get; init; }

    /// <summary>Time to walk with empty hands from step to step, row by row; empty where walking takes no time.</summary>
    public IReadOnlyList<long> Walks { get; init; } = [];

    /// <summary>With empty hands, metres a second.</summary>
    public double WalkingSpeed { get; init; }

    public double WalkMetres(long walk) => Ticks.Seconds(walk) * WalkingSpeed;

    public long Walk(int from, int to) => Walks.Count == 0 ? 0 : Walks[(from * Steps.Count) + to];
}
