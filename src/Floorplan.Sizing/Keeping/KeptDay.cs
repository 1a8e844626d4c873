using Floorplan.Sizing.Simulation.Charts;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing.Keeping;

/// <summary>The runs of a day, taken over while an edit leaves the line as it is.</summary>
internal static class KeptDay
{
    /// <param name="before">Of an earlier plan; null where there is none.</param>
    public static PlannedDay Of(PlanFacts facts, PlannedDay? before)
    {
        if (before?.Planned.Line is { } known)
        {
            var planned = PlannedLineMaker.Of(facts);
            if (planned.Line is { } line && SameLine.Is(known, line))
            {
                return before with { Planned = planned };
            }
        }

        return PlannedDay.Of(facts);
    }
}

/// <summary>What sheet 10 asks many runs for, with the run of the line that it belongs to.</summary>
internal sealed record KeptRuns(LineOutcome? FlatOut)
{
    public IReadOnlyList<CrewPace>? Paces { get; init; }

    public IReadOnlyList<DayGain>? Gains { get; init; }
}
