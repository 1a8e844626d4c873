using System.Globalization;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Frames;

/// <summary>Scales to choose from, largest picture first.</summary>
public static class ScaleSeries
{
    /// <summary>
    /// ISO 5455 reductions, with 1:25, which scale rulers carry (common practice, no source). Those past 1:100 are for plans that not
    /// even parts of a view at 1:100 can hold.
    /// </summary>
    private static readonly double[] Metric = [5, 10, 20, 25, 50, 100, 200, 500, 1000, 2000, 5000, 10000];

    /// <summary>3, 1 1/2, 1, 3/4, 1/2, 3/8, 1/4, 3/16, 1/8 in to the foot; past them as for metric plans, then engineers' scales.</summary>
    private static readonly double[] Imperial = [4, 8, 12, 16, 24, 32, 48, 64, 96, 192, 480, 1200, 2400, 6000, 12000];

    /// <summary>
    /// Plans of up to 12.2 m have this scale or a larger one: 1:50, and 1/4 in to the foot, which plan reviewers ask for at least (F).
    /// </summary>
    public static double SmallestWanted(UnitSystem units) => units == UnitSystem.Metric ? 50 : 48;

    public static IReadOnlyList<double> For(UnitSystem units) => units == UnitSystem.Metric ? Metric : Imperial;

    /// <summary><c>1:50</c>, as a <c>sheet</c> statement says it.</summary>
    public static string Ratio(double denominator) => string.Create(CultureInfo.InvariantCulture, $"1:{denominator:0.##}");

    /// <summary><c>1:50</c>, or <c>1/4" = 1'-0" (1:48)</c>.</summary>
    public static string Text(double denominator, UnitSystem units)
    {
        string ratio = Ratio(denominator);
        string? inches = units == UnitSystem.Metric ? null : denominator switch
        {
            4 => "3\"",
            8 => "1 1/2\"",
            12 => "1\"",
            16 => "3/4\"",
            24 => "1/2\"",
            32 => "3/8\"",
            48 => "1/4\"",
            64 => "3/16\"",
            96 => "1/8\"",
            192 => "1/16\"",
            _ => null,
        };
        return inches is null ? ratio : $"{inches} = 1'-0\" ({ratio})";
    }
}
