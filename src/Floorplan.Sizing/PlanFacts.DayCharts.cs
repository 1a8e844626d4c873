using Floorplan.Sizing.Keeping;
using Floorplan.Sizing.Simulation.Charts;
using Floorplan.Sizing.Simulation.Gains;

namespace Floorplan.Sizing;

/// <content>The day as charts show it; nothing that a check asks for.</content>
public sealed partial class PlanFacts
{
    private KeptRuns? keptRuns;
    private Told<DayInTime>? dayInTime;
    private IReadOnlyList<CrewPace>? crewPaces;
    private IReadOnlyList<DayGain>? fewGains;

    /// <summary>One run, slot by slot; null where the day cannot be run.</summary>
    public DayInTime? DayInTime => Once(ref dayInTime, f => new Told<DayInTime>(Simulation.Charts.DayInTime.Of(f))).Value;

    public IReadOnlyList<CrewPace> CrewPaces => Once(ref crewPaces, f => f.Kept().Paces ?? f.Keep(r => r with
    {
        Paces = CrewPace.Of(f),
    }).Paces!);

    /// <summary>What each single change would gain, of the busiest parts; best first.</summary>
    public IReadOnlyList<DayGain> FewGains => Once(ref fewGains, f => f.Kept().Gains ?? f.Keep(r => r with
    {
        Gains = DayGains.Few(f.Day, DayGains.SheetWeight, inParallel: true),
    }).Gains!);

    /// <summary>Those of an earlier plan hold while its runs are taken over.</summary>
    private KeptRuns Kept() => keptRuns is { } runs && ReferenceEquals(runs.FlatOut, Day.FlatOut) ? runs : new KeptRuns(Day.FlatOut);

    private KeptRuns Keep(Func<KeptRuns, KeptRuns> more) => keptRuns = more(Kept());

    /// <summary>What is worked out and may be nothing.</summary>
    private sealed record Told<T>(T? Value);
}
