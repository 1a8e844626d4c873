using Floorplan.Sizing.Keeping;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Sizing;

/// <content>The day: what the line makes, and what holds it up.</content>
public sealed partial class PlanFacts
{
    private readonly PlannedDay? dayBefore;
    private PlannedDay? day;

    public PlannedDay Day => Once(ref day, f => KeptDay.Of(f, dayBefore));
}
