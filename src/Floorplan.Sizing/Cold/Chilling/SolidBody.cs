using Floorplan.Sizing.Cold.Products;

namespace Floorplan.Sizing.Cold.Chilling;

/// <summary>
/// A fish, a joint or a carcass as a box whose sides are as 1 to 3 to 6 (own assumption). For sides of beef of 100 and 125 kg in air of
/// 0 C and 15 W/m2K that gives 23 and 26 h to 7 C, between the published 19 and 24.5 h, and 22 and 27 h, of lean and of fat ones.
/// </summary>
internal static class SolidBody
{
    private const double Middle = 3;
    private const double Long = 6;

    /// <summary>The least side, m.</summary>
    public static double Thickness(double kilograms, double density) => Math.Cbrt(kilograms / density / (Middle * Long));

    /// <param name="film">W/m2K.</param>
    public static CoolingCurve Curve(double kilograms, FoodParts food, double film)
    {
        double side = Thickness(kilograms, food.Density(Mean));
        return CoolingCurve.Box(
            side, side * Middle, side * Long, film, food.Conductivity(Mean),
            food.Conductivity(Mean) / (food.Density(Mean) * food.SpecificHeat(Mean) * 1000));
    }

    /// <summary>Where the food's own figures are read, C.</summary>
    private const double Mean = 5;
}
