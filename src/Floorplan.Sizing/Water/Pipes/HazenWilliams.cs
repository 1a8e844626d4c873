using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Pipes;

/// <summary>Pressure that water loses in a full pipe.</summary>
public static class HazenWilliams
{
    /// <summary>Smoothness of copper tube.</summary>
    public const double Copper = 140;

    /// <summary>Weight of a cubic metre of water, N.</summary>
    public const double WaterWeight = 1000 * 9.80665;

    private const double Inch = 0.0254;
    private const double Gpm = InchPound.CubicMetresPerGallon / 60;

    public static Source Source { get; } = new(
        "Hazen-Williams, 0.2083 x (100/C)^1.852 x gpm^1.852 / in^4.8655 ft in 100 ft; copper C 140", Origin.FoundInPublicCopy);

    /// <summary>Metres of water.</summary>
    /// <param name="metres">Length of the pipe, with what its fittings count for.</param>
    /// <param name="flow">m3/s.</param>
    /// <param name="bore">m; more than 0.</param>
    public static double Head(double metres, double flow, double bore, double smoothness = Copper)
        => metres * 0.002083 * Math.Pow(100 / smoothness, 1.852) * Math.Pow(flow / Gpm, 1.852) / Math.Pow(bore / Inch, 4.8655);

    /// <summary>Pa.</summary>
    public static double Loss(double metres, double flow, double bore, double smoothness = Copper)
        => Head(metres, flow, bore, smoothness) * WaterWeight;

    /// <summary>m/s.</summary>
    public static double Velocity(double flow, double bore) => flow / (Math.PI / 4 * bore * bore);
}
