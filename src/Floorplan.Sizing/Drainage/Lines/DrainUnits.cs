using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Drainage.Lines;

/// <summary>What comes to a drain, in the units of the code.</summary>
public static class DrainUnits
{
    private const double Inch = 25.4;

    /// <summary>Drainage fixture units of a flow of one US gallon a minute.</summary>
    public const double EachGpm = 2;

    public static Source Source { get; } =
        new("IPC 2021 Tables 709.1 and 709.2, and 709.3: 2 units for each gpm that runs on", Origin.FoundInSecondaryCopy, Force.ModelCode);

    /// <summary>Discharge of a fixture, L/s.</summary>
    public static Source EnSource { get; } = new(
        "EN 12056-2, system I: basin 0.5, sink 0.8, floor drain DN 50 0.8, DN 70 1.5, DN 100 2.0 L/s", Origin.FromMemory, Force.ModelCode);

    /// <summary>Units of a sink.</summary>
    public static double OfSink(Station sink) => sink.IsHandSink ? 1 : 2;

    /// <summary>Units of a floor drain: by its trap, which is as wide as it is.</summary>
    public static double OfFloorDrain(Drain drain) => (drain.Size?.Millimetres ?? 0) switch
    {
        < 2.5 * Inch => 2,
        < 3.5 * Inch => 5,
        _ => 6,
    };

    /// <summary>L/s of a sink.</summary>
    public static double LitresOfSink(Station sink) => sink.IsHandSink ? 0.5 : 0.8;

    /// <summary>L/s of a floor drain.</summary>
    public static double LitresOfFloorDrain(Drain drain) => (drain.Size?.Millimetres ?? 0) switch
    {
        < 65 => 0.8,
        < 90 => 1.5,
        _ => 2.0,
    };

    /// <summary>Units of a flow in m3/s that runs on.</summary>
    public static double OfFlow(double flow) => EachGpm * flow * 60 / InchPound.CubicMetresPerGallon;
}
