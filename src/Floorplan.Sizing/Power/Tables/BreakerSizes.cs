using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Tables;

/// <summary>Ratings of breakers that are sold, in A.</summary>
internal static class BreakerSizes
{
    public static readonly Source UsSource = new("NEC 240.6(A), standard ratings", Origin.FoundInSecondaryCopy, Force.ModelCode);

    public static readonly Source IecSource = new("IEC 60898-1, usual ratings", Origin.FromMemory, Force.ModelCode);

    public static IReadOnlyList<double> Us { get; } =
    [
        15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450, 500, 600,
    ];

    public static IReadOnlyList<double> Iec { get; } = [6, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125];

    /// <summary>The smallest that is not smaller than so many A; null above the largest.</summary>
    public static double? NextUp(IReadOnlyList<double> sizes, double amperes)
        => sizes.Where(s => amperes <= s * (1 + 1e-9)).Select(s => (double?)s).FirstOrDefault();
}
