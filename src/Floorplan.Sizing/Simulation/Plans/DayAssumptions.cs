using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Simulation.Plans;

/// <summary>What a day takes for given where the plan does not say it, each with where it comes from.</summary>
public static class DayAssumptions
{
    /// <summary>Metres a second.</summary>
    public const double Loaded = 1.0;
    public const double Trolley = 1.0;
    public const double Empty = 1.245;
    public const double Belt = 0.3;

    /// <summary>To pick one thing up and to put it down, s.</summary>
    public const double PickAndPut = 1.3;

    /// <summary>To tip one bin out, s.</summary>
    public const double TipBin = 30;

    /// <summary>On the way into a room, s: 20 to scrub and rinse, and as long to take soap and to dry.</summary>
    public const double HandWash = 40;

    /// <summary>To clean a square metre of floor with its walls, person-seconds.</summary>
    public const double WashFloor = 60;

    /// <summary>To clean one station, person-seconds.</summary>
    public const double WashStation = 300;

    /// <summary>On a trolley whose load the plan does not say, kg.</summary>
    public const double TrolleyKilograms = 60;

    /// <summary>Waste, kg in a litre.</summary>
    public const double WasteDensity = 1;

    public static Source LoadedSource { get; } = new("ISO 11228-1:2021, scope: carrying at 0.5 to 1.0 m/s", Origin.FoundInPublicCopy);

    public static Source EmptySource { get; } = new("MTM-1, walking with obstacles, 17 TMU a pace of 30 in", Origin.FromMemory);

    public static Source PickSource { get; } = new("MTM-1 data card 2019, reach and move over 20 in, 36.8 TMU", Origin.FoundInPublicCopy);

    public static Source HandWashSource { get; } =
        new("FDA Food Code 2-301.12: at least 20 s; 40 s with soap and drying is an own estimate", Origin.FoundInPublicCopy);

    /// <summary>Of <see cref="WashFloor"/> and <see cref="WashStation"/>.</summary>
    public static Source WashDownSource { get; } = new("own assumption: a minute a square metre, five a station", Origin.OwnAssumption);

    public static Source Own { get; } = new("own assumption", Origin.OwnAssumption);
}
