namespace Floorplan.Sizing.Cold.Chilling;

/// <summary>
/// How the centre of a body cools: (T − Tm)/(Ti − Tm) = j 10^(−t/f), ASHRAE Refrigeration, chapter on cooling times, with
/// the fast limits of Lacroix and Castaigne (1987). The root u tan u = Bi is solved; their polynomial, as it is printed, is within
/// 0.25 % of it up to Bi 10 and 3 % off at 50.
/// </summary>
/// <param name="F">Seconds in which the difference falls to a tenth.</param>
/// <param name="J">How far the centre lags behind at the start.</param>
internal readonly record struct CoolingCurve(double F, double J)
{
    /// <summary>From here on the surface is as cold as what cools it, and below the other the body is of one temperature.</summary>
    private const double FastSurface = 100;
    private const double OneTemperature = 0.1;

    /// <summary>f α / L2 and j of a slab whose surface is as cold as what cools it.</summary>
    private const double FastF = 0.9332;
    private const double FastJ = 1.273;

    /// <param name="half">Half of the thickness, m; both faces are cooled.</param>
    /// <param name="film">W/m2K; infinite for a surface that is as cold as what cools it.</param>
    /// <param name="conductivity">W/mK.</param>
    /// <param name="diffusivity">m2/s.</param>
    public static CoolingCurve Slab(double half, double film, double conductivity, double diffusivity)
    {
        double unit = half * half / diffusivity;
        double biot = film * half / conductivity;
        if (biot > FastSurface)
        {
            return new CoolingCurve(FastF * unit, FastJ);
        }

        double u = Root(biot);
        return biot <= OneTemperature
            ? new CoolingCurve(Math.Log(10) / biot * unit, 1)
            : new CoolingCurve(Math.Log(10) / (u * u) * unit, 2 * Math.Sin(u) / (u + (Math.Sin(u) * Math.Cos(u))));
    }

    /// <summary>A box cooled on all faces: 1/f is the sum of 1/f of three slabs, j their product.</summary>
    public static CoolingCurve Box(double a, double b, double c, double film, double conductivity, double diffusivity)
    {
        CoolingCurve[] slabs = [.. new[] { a, b, c }.Select(side => Slab(side / 2, film, conductivity, diffusivity))];
        return new CoolingCurve(1 / slabs.Sum(s => 1 / s.F), slabs.Aggregate(1.0, (j, s) => j * s.J));
    }

    /// <summary>Until the centre is that cold, in s; null where it never is.</summary>
    public double? Seconds(double from, double to, double around)
        => to <= around || from <= to ? from <= to ? 0 : null : Math.Max(0, F * Math.Log10(J * (from - around) / (to - around)));

    /// <summary>The first root of u tan u = Bi, by halving.</summary>
    public static double Root(double biot)
    {
        double low = 0;
        double high = Math.PI / 2;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = middle * Math.Tan(middle) < biot ? (middle, high) : (low, middle);
        }

        return (low + high) / 2;
    }
}
