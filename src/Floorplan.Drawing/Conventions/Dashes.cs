namespace Floorplan.Drawing.Conventions;

/// <summary>Dash patterns in multiples of the line width d (ISO 128-2: dash 12d, long dash 24d, gap 3d, dot 0.5d; F2).</summary>
public static class Dashes
{
    private const double Dash = 12;
    private const double LongDash = 24;
    private const double Gap = 3;
    private const double Dot = 0.5;

    /// <summary>Type 02: hidden or overhead.</summary>
    public static IReadOnlyList<double> Dashed(double d) => [Dash * d, Gap * d];

    /// <summary>Type 04: centre lines, axes.</summary>
    public static IReadOnlyList<double> LongDashDot(double d) => [LongDash * d, Gap * d, Dot * d, Gap * d];

    /// <summary>Type 05: clear spaces, movable parts, neighbouring things.</summary>
    public static IReadOnlyList<double> LongDashDoubleDot(double d) => [LongDash * d, Gap * d, Dot * d, Gap * d, Dot * d, Gap * d];

    /// <summary>Type 07.</summary>
    public static IReadOnlyList<double> Dotted(double d) => [Dot * d, Gap * d];
}
