namespace Floorplan.Sizing.Ground;

/// <summary>Velocity pressure of wind by ASCE 7, exposure C, flat ground.</summary>
internal static class AmericanWind
{
    /// <summary>Directions differ; for the main frame of buildings.</summary>
    public const double Direction = 0.85;

    /// <summary>Heights below this count as this, ft.</summary>
    private const double LeastFeet = 15;
    private const double MetresPerFoot = 0.3048;

    /// <summary>Kz of exposure C.</summary>
    /// <param name="height">Above ground, m.</param>
    public static double Exposure(double height)
        => 2.01 * Math.Pow(Math.Max(height / MetresPerFoot, LeastFeet) / 900, 2 / 9.5);

    /// <summary>Pa.</summary>
    /// <param name="gust">Of 3 seconds at 33 ft, m/s.</param>
    /// <param name="exposure">By <see cref="Exposure"/>.</param>
    public static double Pressure(double gust, double exposure) => 0.613 * exposure * Direction * gust * gust;
}
