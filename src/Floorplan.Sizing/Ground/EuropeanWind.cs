namespace Floorplan.Sizing.Ground;

/// <summary>Peak pressure of wind by EN 1991-1-4, 4.3 to 4.5, flat ground.</summary>
internal static class EuropeanWind
{
    /// <summary>Air, kg/m3.</summary>
    public const double Density = 1.25;

    /// <summary>Table 4.1: II, low grass and single trees.</summary>
    public static (double Rough, double Least) OpenLand { get; } = (0.05, 2);

    /// <summary>How many times the pressure of the basic wind a gust at that height has.</summary>
    /// <param name="rough">Roughness length, m.</param>
    /// <param name="least">Lowest height that is told apart, m.</param>
    /// <param name="height">Above ground, m.</param>
    public static double Exposure(double rough, double least, double height)
    {
        double log = Math.Log(Math.Max(height, least) / rough);
        double mean = 0.19 * Math.Pow(rough / 0.05, 0.07) * log;
        return (1 + (7 / log)) * mean * mean;
    }

    /// <summary>Pa.</summary>
    /// <param name="basic">Basic velocity, a mean of 10 minutes at 10 m over open land, m/s.</param>
    /// <param name="exposure">By <see cref="Exposure"/>.</param>
    public static double Pressure(double basic, double exposure) => Density / 2 * basic * basic * exposure;
}
