using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water.Hot;

/// <summary>Heat that water takes.</summary>
internal static class WaterHeat
{
    /// <summary>J/(m3 K): 1000 kg/m3 and 4186 J/(kg K).</summary>
    public const double PerCubicMetre = 1000 * 4186.0;

    public static Source Source { get; } = new("heat = volume x 1000 kg/m³ x 4186 J/(kg K) x rise of temperature",
        Origin.FoundInPublicCopy);

    public static Source MixSource { get; } = new("heat balance of two waters", Origin.FoundInPublicCopy);

    /// <summary>J.</summary>
    public static double Energy(double cubicMetres, double rise) => cubicMetres * PerCubicMetre * Math.Max(0, rise);

    /// <summary>W, for a flow in m3/s.</summary>
    public static double Power(double flow, double rise) => flow * PerCubicMetre * Math.Max(0, rise);

    /// <summary>The share of hot water in a mix, from 0 to 1.</summary>
    public static double HotShare(double cold, double hot, double mixed) => hot <= cold ? 1 : Math.Clamp((mixed - cold) / (hot - cold), 0,
        1);
}
