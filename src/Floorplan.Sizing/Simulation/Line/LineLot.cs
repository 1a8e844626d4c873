namespace Floorplan.Sizing.Simulation.Line;

/// <summary>Another product of the day: what comes, and how each step and way of the line sees it.</summary>
/// <param name="From">When its first item comes, in ticks from the start of work.</param>
/// <param name="Steps">As many as the line has, in its order.</param>
/// <param name="Moves">As many as the line has, in its order.</param>
public sealed record LineLot(LineSupply Supply, long From, IReadOnlyList<LineStep> Steps, IReadOnlyList<LineMove> Moves);
