namespace Floorplan.Sizing.Cold.Products;

/// <summary>
/// What a food is made of, as parts of its weight, and its figures by Choi and Okos (1986), unfrozen; temperatures in C.
/// </summary>
internal sealed record FoodParts(double Water, double Protein, double Fat, double Carbohydrate, double Ash)
{
    /// <summary>Tables add up to a little more or less than the whole.</summary>
    private double Whole => Water + Protein + Fat + Carbohydrate + Ash;

    private IEnumerable<(double Share, Fit Heat, Fit Conductivity, Fit Density)> Parts =>
    [
        (Water / Whole, new(4.1762, -9.0864e-5, 5.4731e-6), new(0.57109, 1.7625e-3, -6.7036e-6), new(997.18, 3.1439e-3, -3.7574e-3)),
        (Protein / Whole, new(2.0082, 1.2089e-3, -1.3129e-6), new(0.17881, 1.1958e-3, -2.7178e-6), new(1329.9, -0.5184, 0)),
        (Fat / Whole, new(1.9842, 1.4733e-3, -4.8008e-6), new(0.18071, -2.7604e-4, -1.7749e-7), new(925.59, -0.41757, 0)),
        (Carbohydrate / Whole, new(1.5488, 1.9625e-3, -5.9399e-6), new(0.20141, 1.3874e-3, -4.3312e-6), new(1599.1, -0.31046, 0)),
        (Ash / Whole, new(1.0926, 1.8896e-3, -3.6817e-6), new(0.32962, 1.4011e-3, -2.9069e-6), new(2423.8, -0.28063, 0)),
    ];

    /// <summary>kJ/kgK: the sum of the parts.</summary>
    public double SpecificHeat(double celsius) => Parts.Sum(p => p.Share * p.Heat.At(celsius));

    /// <summary>kg/m3: volumes add up.</summary>
    public double Density(double celsius) => 1 / Parts.Sum(p => p.Share / p.Density.At(celsius));

    /// <summary>W/mK: each part by its share of the volume.</summary>
    public double Conductivity(double celsius)
        => Density(celsius) * Parts.Sum(p => p.Share / p.Density.At(celsius) * p.Conductivity.At(celsius));

    /// <summary>kJ/kgK of unfrozen food by its share of solids, after Chen: within 2.5 % of the sum of the parts.</summary>
    public static double QuickSpecificHeat(double solids) => 4.19 - (2.30 * solids) - (0.628 * solids * solids * solids);

    /// <summary>kJ/kg, all its water frozen.</summary>
    public static double Latent(double water) => 334 * water;

    private readonly record struct Fit(double A, double B, double C)
    {
        public double At(double t) => A + (t * (B + (t * C)));
    }
}
