using Floorplan.Sizing.Keeping;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Simulation.Running;

namespace Floorplan.Sizing;

/// <content>The day: what the line makes, and what holds it up.</content>
public sealed partial class PlanFacts
{
    private readonly PlannedDay? dayBefore;
    private PlannedDay? day;

    private Told<RecordedDay>? recordedDay;
    private Told<RunningTimes>? running;

    /// <summary>Null where the day cannot be run.</summary>
    public RecordedDay? RecordedDay => Once(ref recordedDay, f => new Told<RecordedDay>(Simulation.Running.RecordedDay.Of(f))).Value;

    /// <summary>When each station is in use; null where the day cannot be run.</summary>
    public RunningTimes? Running => Once(ref running, f => new Told<RunningTimes>(RunningTimes.Of(f))).Value;

    public PlannedDay Day => Once(ref day, f => KeptDay.Of(f, dayBefore));
}
