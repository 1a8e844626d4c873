using Floorplan.Model;
using Floorplan.Sizing.Water.Pipes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Drainage.Lines;

/// <summary>One size of drain pipe.</summary>
/// <param name="Name">As it is bought: <c>3 in</c>, <c>DN 100</c>.</param>
/// <param name="Nominal">mm, to compare with the size of a drain.</param>
/// <param name="Bore">Inside, m.</param>
/// <param name="Units">Drainage fixture units that a building drain of it takes at 1/4 in a foot; 0 where it takes none.</param>
public sealed record DrainPipe(string Name, double Nominal, double Bore, double Units)
{
    /// <summary>Short, for a drawing: <c>3"</c>, <c>DN 100</c>.</summary>
    public string Mark => PipeMark.Of(Name, Name);

    private const double Inch = 25.4;

    private static readonly DrainPipe[] Inches =
    [
        new("2 in", 2 * Inch, 0.0508, 21), new("2 1/2 in", 2.5 * Inch, 0.0635, 24), new("3 in", 3 * Inch, 0.0762, 42),
        new("4 in", 4 * Inch, 0.1016, 216), new("5 in", 5 * Inch, 0.127, 480), new("6 in", 6 * Inch, 0.1524, 840),
    ];

    private static readonly DrainPipe[] Metric =
    [
        new("DN 50", 50, 0.044, 0), new("DN 70", 70, 0.068, 0), new("DN 100", 100, 0.096, 0), new("DN 125", 125, 0.113, 0),
        new("DN 150", 150, 0.146, 0),
    ];

    public static Source InchSource { get; } = new(
        "IPC 2018 Table 710.1(1), building drain at 1/4 in a foot; 5 and 6 in from memory", Origin.FoundInPublicCopy, Force.ModelCode);

    public static Source MetricSource { get; } =
        new("EN 12056-2: bores of DN 50 to 150, drain at most half full", Origin.FromMemory, Force.ModelCode);

    public static IReadOnlyList<DrainPipe> Of(CodeChoice code) => code == CodeChoice.Us ? Inches : Metric;

    public static Source SourceOf(CodeChoice code) => code == CodeChoice.Us ? InchSource : MetricSource;

    /// <summary>Whether it carries so much: by units in the US, else half full by <see cref="Manning"/>.</summary>
    /// <param name="flow">m3/s.</param>
    public bool Carries(CodeChoice code, double units, double flow, double slope)
        => code == CodeChoice.Us ? units <= Units : flow <= Manning.Full(Bore, slope) / 2;
}
