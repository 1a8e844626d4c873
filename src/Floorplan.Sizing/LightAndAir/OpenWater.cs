namespace Floorplan.Sizing.LightAndAir;

/// <summary>
/// What dries off open water; ASHRAE HVAC Applications, still or moving air (from memory): w = A (pw − pa)(0.089 + 0.0782 V) / hfg with
/// pressures in kPa and hfg in kJ/kg.
/// </summary>
internal static class OpenWater
{
    /// <summary>Heat that goes off with the vapour, in W/m2.</summary>
    /// <param name="vapour">Of the air over it, in Pa.</param>
    /// <param name="speed">Of that air, in m/s.</param>
    public static double HeatPerArea(double water, double vapour, double speed = 0)
        => Math.Max(0, Psychrometrics.Saturation(water) - vapour) * (0.089 + (0.0782 * Math.Max(0, speed)));

    /// <summary>In kg/s from each m2.</summary>
    public static double PerArea(double water, double vapour, double speed = 0) => HeatPerArea(water, vapour, speed) / Latent(water);

    /// <summary>To turn warm water into vapour, in J/kg; steam tables within 0.3 % from 0 to 100 C (from memory).</summary>
    public static double Latent(double celsius) => (2501 - (2.38 * Math.Clamp(celsius, 0, 100))) * 1000;
}
