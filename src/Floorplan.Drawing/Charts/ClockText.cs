using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Drawing.Charts;

/// <summary>Times of the day as charts print them: hours and minutes from the start of work, for a plan names no clock time.</summary>
public static class ClockText
{
    /// <summary><c>1:05</c>; what is not whole minutes is cut off, as on a clock.</summary>
    public static string Of(long ticks) => FormattableString.Invariant($"{ticks / Ticks.Hour}:{ticks / Ticks.Minute % 60:00}");
}
