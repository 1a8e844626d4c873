using Floorplan.Language.Quantities;
using Floorplan.Sizing;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Working;

namespace Floorplan.Drawing.Sheets.TheDay;

/// <summary>What to know to read the day.</summary>
internal static class DayNotes
{
    /// <param name="notDrawn">Curves for which there is no room.</param>
    public static IEnumerable<string> Of(PlanFacts facts, IReadOnlyList<string> notDrawn)
    {
        var day = facts.DayInTime!;
        var units = facts.Plan.Units;
        string slot = QuantityText.Time(Ticks.Seconds(day.Slot));
        yield return $"The charts show one run at the pace of the target, in slots of {slot}: a bar says which share "
            + "of that time went into what. The height of a frame is the whole slot; blank is waiting, or nothing to work on.";
        yield return "Curves show the highest value of each short stretch of time. A triangle marks when something is full first.";
        yield return "The pace of the line, and what a change would gain, are from runs in which there is always a next item to begin. "
            + "Changes are tried at what is busiest; the command floorplan day tries more.";
        yield return $"Taken where the plan does not say: carrying {Speed(DayAssumptions.Loaded)} ({Short(DayAssumptions.LoadedSource)}); "
            + $"walking {Speed(DayAssumptions.Empty)} ({Short(DayAssumptions.EmptySource)}). The command floorplan day lists "
            + "all, with where it is from.";
        if (facts.CrewPaces.Count == 0 && facts.Day.Planned.Line!.Crews.Count > 0)
        {
            yield return "Pace with more or fewer people is not drawn: the line is so long that its runs would take too much time. The "
                + "command floorplan day with --vary runs them.";
        }

        if (notDrawn.Count > 0)
        {
            yield return $"Also fill up, without a curve for want of room: {string.Join(", ", notDrawn)}.";
        }

        // Clauses are quoted by the command; on a sheet in feet they would be metric figures.
        static string Short(Source source) => source.Text.Split(',')[0];

        string Speed(double metresPerSecond) => QuantityText.Of(metresPerSecond, Measure.Speed, units);
    }
}
