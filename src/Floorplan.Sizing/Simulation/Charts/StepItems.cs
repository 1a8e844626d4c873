using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>How many items a count of a step stands for.</summary>
internal static class StepItems
{
    /// <summary>In the places of a step. Every job is a whole batch but the last of the day.</summary>
    /// <param name="items">Of the day.</param>
    public static int InPlaces(LineStep step, StepCount count, int items)
    {
        if (step.Places == LineStep.Unlimited)
        {
            return count.Started;
        }

        int missing = count.Going > 0 && count.Started == items && items % step.Batch > 0 ? step.Batch - (items % step.Batch) : 0;
        return (count.Going * step.Batch) - missing + count.Done;
    }
}
