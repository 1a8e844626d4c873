namespace Floorplan.Sizing.LightAndAir;

/// <summary>
/// The temperature of shaded air that would heat a wall or roof as much as air, sun and sky do: ASHRAE, te = to + α I/ho − εΔR/ho.
/// </summary>
internal static class SolAir
{
    /// <summary>α/ho in m2K/W: 0.30 and 0.15 h ft2 °F/Btu.</summary>
    public const double Dark = 0.052;
    public const double Light = 0.026;

    /// <summary>What a roof loses to the open sky, in K; nothing for a wall.</summary>
    public const double SkyOnRoof = 4;

    /// <param name="taken">α/ho, in m2K/W.</param>
    /// <param name="sun">W/m2.</param>
    public static double Temperature(double outside, double taken, double sun, double sky) => outside + (taken * sun) - sky;
}
