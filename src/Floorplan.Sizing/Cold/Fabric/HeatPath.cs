namespace Floorplan.Sizing.Cold.Fabric;

/// <summary>Heat through walls after ISO 6946:2017; m2K/W and W/m2K.</summary>
internal static class HeatPath
{
    /// <summary>On a face inside that heat goes through sideways.</summary>
    public const double Inside = 0.13;

    /// <summary>On a face inside that heat goes down or up through, as from a warm roof and from a warm floor.</summary>
    public const double Down = 0.17;
    public const double Up = 0.10;
    public const double Outside = 0.04;

    /// <param name="films">Both faces together.</param>
    /// <param name="layers">Thickness in m and conductivity in W/mK of each.</param>
    public static double Transmittance(double films, params ReadOnlySpan<(double Thick, double Conductivity)> layers)
    {
        double resistance = films;
        foreach (var (thick, conductivity) in layers)
        {
            resistance += thick / conductivity;
        }

        return 1 / resistance;
    }

    /// <summary>Of the face on the warm side, ISO 13788.</summary>
    public static double Surface(double warm, double cold, double transmittance) => warm - (Inside * transmittance * (warm - cold));

    /// <summary>The transmittance from which on that face is below the dew point.</summary>
    public static double DryUpTo(double warm, double cold, double dewPoint) => (warm - dewPoint) / (Inside * (warm - cold));
}
