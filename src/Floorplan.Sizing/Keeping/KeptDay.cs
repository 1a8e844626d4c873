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
        var planned = PlannedLineMaker.Of(facts);
        return before?.Planned.Whole is not null && planned.Whole is not null && IsSame(before.Planned, planned)
            ? before with { Planned = planned with { Tightest = before.Planned.Tightest } }
            : PlannedDay.Of(planned);
    }

    /// <summary>The whole day, and each product by itself, which is run for its pace.</summary>
    private static bool IsSame(PlannedLine a, PlannedLine b) => SameLine.Is(a.Whole!, b.Whole!)
        && a.Products.Count == b.Products.Count
        && a.Products.Zip(b.Products).All(
            p => SameLine.Is(p.First.Line, p.Second.Line) && p.First.PerHour.Equals(p.Second.PerHour));
}

/// <summary>What sheet 10 asks many runs for, with the run of the line that it belongs to.</summary>
internal sealed record KeptRuns(LineOutcome? FlatOut)
{
    public IReadOnlyList<CrewPace>? Paces { get; init; }

    public IReadOnlyList<DayGain>? Gains { get; init; }
}
