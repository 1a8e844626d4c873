using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Drainage.Lines;

/// <summary>The size of a grease interceptor, by the volume that is let out at once.</summary>
internal static class GreaseInterceptor
{
    /// <summary>Rated flows, US gallons a minute.</summary>
    private static readonly double[] Sizes = [4, 7, 10, 15, 20, 25, 35, 50];

    private const double FilledShare = 0.75;

    /// <summary>A reading of a table may lie this much over a size.</summary>
    private const double Rounding = 1e-9;

    public static Source Source { get; } = new(
        "PDI G101: 75 % of the volume of the fixture, let out in 1 or 2 minutes; next size of 4 to 50 gpm", Origin.FoundInPublicCopy);

    /// <summary>US gallons a minute that a fixture of so many m3 lets out.</summary>
    public static double Gpm(double volume, double minutes) => volume / InchPound.CubicMetresPerGallon * FilledShare / minutes;

    /// <summary>The next rated size in US gallons a minute; null above the largest.</summary>
    public static double? Next(double gpm) => Sizes.Where(s => gpm <= s + Rounding).Select(s => (double?)s).FirstOrDefault();

    /// <summary>Grease that it holds, in pounds.</summary>
    public static double Pounds(double gpm) => 2 * gpm;
}
