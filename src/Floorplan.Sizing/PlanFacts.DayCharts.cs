using Floorplan.Sizing.Simulation.Charts;
using Floorplan.Sizing.Simulation.Gains;

namespace Floorplan.Sizing;

/// <content>The day as charts show it; nothing that a check asks for.</content>
public sealed partial class PlanFacts
{
    private Told<DayInTime>? dayInTime;
    private IReadOnlyList<CrewPace>? crewPaces;
    private IReadOnlyList<DayGain>? fewGains;

    /// <summary>One run, slot by slot; null where the day cannot be run.</summary>
    public DayInTime? DayInTime => Once(ref dayInTime, f => new Told<DayInTime>(Simulation.Charts.DayInTime.Of(f))).Value;

    public IReadOnlyList<CrewPace> CrewPaces => Once(ref crewPaces, CrewPace.Of);

    /// <summary>What each single change would gain, of the busiest parts; best first.</summary>
    public IReadOnlyList<DayGain> FewGains => Once(ref fewGains, f => DayGains.Few(f.Day));

    /// <summary>What is worked out and may be nothing.</summary>
    private sealed record Told<T>(T? Value);
}
