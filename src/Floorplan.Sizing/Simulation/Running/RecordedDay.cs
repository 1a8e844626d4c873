using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing.Simulation.Running;

/// <summary>One run of the day at the pace of the target, with what happened when.</summary>
public sealed record RecordedDay(LineOutcome Outcome, LineRecord Record)
{
    /// <summary>Null where the day cannot be run.</summary>
    internal static RecordedDay? Of(PlanFacts facts)
    {
        if (facts.Day.Planned.Whole is not { } line)
        {
            return null;
        }

        var record = new LineRecord();
        return new RecordedDay(PlannedDay.Run(line, record: record), record);
    }
}
