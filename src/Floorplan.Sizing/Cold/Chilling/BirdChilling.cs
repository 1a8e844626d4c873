namespace Floorplan.Sizing.Cold.Chilling;

/// <summary>
/// A plucked, drawn bird cools like a slab cooled on both faces, for it is hollow and cold comes to the meat from both sides. The
/// thickness is fitted to the measured 43 min of bare birds of 0.9 to 1.6 kg in ice water from 32 to 4.4 C; a solid ball of its weight
/// would take three times as long.
/// </summary>
internal static class BirdChilling
{
    private const double FittedHalf = 0.0199;
    private const double FittedKilograms = 1.25;
    private const double Conductivity = 0.49;
    private const double Diffusivity = 1.384e-7;

    /// <summary>Half of the thickness, m: it grows with the third root of the weight.</summary>
    public static double Half(double kilograms) => FittedHalf * Math.Cbrt(kilograms / FittedKilograms);

    /// <summary>In ice water that is stirred: the skin is as cold as the water, as in the trial.</summary>
    public static CoolingCurve InWater(double kilograms)
        => CoolingCurve.Slab(Half(kilograms), double.PositiveInfinity, Conductivity, Diffusivity);

    /// <param name="film">W/m2K.</param>
    public static CoolingCurve InAir(double kilograms, double film) => CoolingCurve.Slab(Half(kilograms), film, Conductivity, Diffusivity);
}
