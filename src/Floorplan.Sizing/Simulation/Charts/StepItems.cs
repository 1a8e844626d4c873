using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>How many items a count of a step stands for.</summary>
internal static class StepItems
{
    /// <summary>In the places of a step; in a store all that have come.</summary>
    public static int InPlaces(LineStep step, StepCount count)
        => step.Places == LineStep.Unlimited ? count.Started : count.Here - count.Waiting;
}
