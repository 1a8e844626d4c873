namespace Floorplan.Sizing.Simulation.Line;

/// <summary>A line that has locked itself: each of these steps is full of what waits for the next one of them.</summary>
/// <param name="At">When, in ticks.</param>
/// <param name="Steps">Indices, in the order in which they wait; the last one for the first.</param>
/// <param name="Wait">The one of them that more room to wait would help.</param>
/// <param name="Items">So much room would let everything in the ring go on.</param>
public sealed record LineLock(long At, IReadOnlyList<int> Steps, int Wait, int Items);
