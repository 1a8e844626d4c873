using Floorplan.Model.Flows;

namespace Floorplan.Model.Space;

/// <summary>What one leg of a flow really does on the floor.</summary>
/// <param name="Route">The way, or null when there is none.</param>
/// <param name="Blocked">Why there is no way, as a sentence; null when there is one.</param>
public sealed record LegRoute(Flow Flow, Leg Leg, Mover Mover, Route? Route, string? Blocked);
