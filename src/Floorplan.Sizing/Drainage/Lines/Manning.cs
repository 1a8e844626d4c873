using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Drainage.Lines;

/// <summary>Water that runs in a sloping pipe by its own weight.</summary>
internal static class Manning
{
    /// <summary>Roughness of a drain pipe in use.</summary>
    public const double Roughness = 0.013;

    public static Source Source { get; } =
        new("Manning, full pipe: flow = 1/n x area x (bore/4)^(2/3) x slope^(1/2), n 0.013", Origin.FoundInPublicCopy);

    /// <summary>m3/s of a full pipe.</summary>
    /// <param name="bore">m.</param>
    /// <param name="slope">Fall over run, 0 or more.</param>
    public static double Full(double bore, double slope, double roughness = Roughness)
        => Math.PI / 4 * bore * bore / roughness * Math.Pow(bore / 4, 2.0 / 3) * Math.Sqrt(Math.Max(0, slope));

    /// <summary>m/s in a full pipe, and in one that is half full.</summary>
    public static double Velocity(double bore, double slope, double roughness = Roughness)
        => Full(bore, slope, roughness) / (Math.PI / 4 * bore * bore);
}
