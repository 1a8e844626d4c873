using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Pipes;

/// <summary>Water supply fixture units of a sink, by what it is for.</summary>
/// <param name="Row">The row of the code's table that it is taken for.</param>
public sealed record FixtureUnits(string Row, double Cold, double Hot, double Total)
{
    private static readonly FixtureUnits Lavatory = new("public lavatory", 1.5, 1.5, 2);
    private static readonly FixtureUnits Service = new("service sink", 2.25, 2.25, 3);
    private static readonly FixtureUnits Kitchen = new("restaurant kitchen sink", 3, 3, 4);

    public static Source Source { get; } =
        new("IPC 2021 Appendix E Table E103.3(2)", Origin.FoundInSecondaryCopy, Force.ModelCode);

    public static FixtureUnits Of(Station sink) => sink.IsHandSink ? Lavatory
        : sink.Purpose.Contains("mop", StringComparison.OrdinalIgnoreCase)
            || sink.Purpose.Contains("service", StringComparison.OrdinalIgnoreCase) ? Service
        : Kitchen;
}
