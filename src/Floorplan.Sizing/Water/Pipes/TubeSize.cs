using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Pipes;

/// <summary>One size of copper tube.</summary>
/// <param name="Name">As it is bought: <c>3/4 in</c>, <c>22 x 1</c>.</param>
/// <param name="Size">What it is called by, mm: the nominal size of inches, the outside of metric tube.</param>
/// <param name="Bore">Inside, m.</param>
public sealed record TubeSize(string Name, double Size, double Bore)
{
    /// <summary>Short, for a drawing: <c>3/4"</c>, <c>22</c>.</summary>
    public string Mark => PipeMark.Of(Name, Name[..Name.IndexOf(' ', StringComparison.Ordinal)]);

    private const double Inch = 0.0254;
    private const double InchMm = 25.4;

    /// <summary>Sizes are round figures of an inch or a millimetre, mm.</summary>
    private const double Rounding = 0.6;

    /// <summary>ASTM B88 type L.</summary>
    private static readonly TubeSize[] Inches =
    [
        new("1/2 in", 0.5 * InchMm, 0.545 * Inch), new("3/4 in", 0.75 * InchMm, 0.785 * Inch), new("1 in", 1 * InchMm, 1.025 * Inch),
            new("1 1/4 in", 1.25 * InchMm, 1.265 * Inch),
        new("1 1/2 in", 1.5 * InchMm, 1.505 * Inch), new("2 in", 2 * InchMm, 1.985 * Inch), new("2 1/2 in", 2.5 * InchMm, 2.465 * Inch),
            new("3 in", 3 * InchMm, 2.945 * Inch),
    ];

    /// <summary>EN 1057: outside diameter by wall.</summary>
    private static readonly TubeSize[] Millimetres =
    [
        new("15 x 1 mm", 15, 0.013), new("18 x 1 mm", 18, 0.016), new("22 x 1 mm", 22, 0.020), new("28 x 1 mm", 28, 0.026),
            new("35 x 1.2 mm", 35, 0.0326),
        new("42 x 1.2 mm", 42, 0.0396), new("54 x 1.5 mm", 54, 0.051), new("76.1 x 1.5 mm", 76.1, 0.0731),
    ];

    public static Source InchSource { get; } = new("ASTM B88 type L copper tube", Origin.FoundInSecondaryCopy);

    public static Source MetricSource { get; } = new("EN 1057 copper tube", Origin.FromMemory);

    /// <summary>Of cold and hot water; the code's own text has no limit.</summary>
    public static Source VelocitySource { get; } = new(
        "at most 8 ft/s (2.4 m/s) cold and 5 ft/s (1.5 m/s) hot: UPC 2021 610.12 and the makers' copper tube handbook",
        Origin.FoundInSecondaryCopy, Force.ModelCode);

    public const double FastestCold = 8 * 0.3048;
    public const double FastestHot = 5 * 0.3048;

    /// <summary>Tube is bought in the units that the plan is in.</summary>
    public static IReadOnlyList<TubeSize> Of(UnitSystem units) => units == UnitSystem.Feet ? Inches : Millimetres;

    public static Source SourceOf(UnitSystem units) => units == UnitSystem.Feet ? InchSource : MetricSource;

    /// <summary>
    /// The tube that a plan calls by its size: in inches by the nominal size, in mm by the outside; null where there is none so small.
    /// </summary>
    public static TubeSize? Bought(UnitSystem units, Length size)
        => Of(units).LastOrDefault(t => t.Size <= size.Millimetres + Rounding);

    /// <summary>The smallest in which water runs no faster than it may; null where the largest is too small.</summary>
    /// <param name="least">Index of the smallest that the code takes.</param>
    public static TubeSize? Smallest(IReadOnlyList<TubeSize> sizes, double flow, double fastest, int least = 0)
        => sizes.Skip(least).FirstOrDefault(s => HazenWilliams.Velocity(flow, s.Bore) <= fastest);
}
