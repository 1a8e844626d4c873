namespace Floorplan.Sizing.Cold.Chilling;

/// <summary>How long a slab, a long cylinder or a ball takes to freeze. SI units; heats in J.</summary>
internal static class Freezing
{
    /// <summary>Plank 1913: from just freezing to just frozen.</summary>
    /// <param name="latent">J/kg.</param>
    /// <param name="freezes">Where it freezes, C.</param>
    /// <param name="thick">The whole thickness or diameter, m.</param>
    public static double Plank(
        FrozenShape shape, double density, double latent, double freezes, double around, double thick, double film, double conductivity)
    {
        var (p, r) = shape switch
        {
            FrozenShape.Slab => (1.0 / 2, 1.0 / 8),
            FrozenShape.LongCylinder => (1.0 / 4, 1.0 / 16),
            _ => (1.0 / 6, 1.0 / 24),
        };
        return density * latent / (freezes - around) * ((p * thick / film) + (r * thick * thick / conductivity));
    }

    /// <summary>Pham 1986 (from memory), a slab: from above freezing until the centre is at <paramref name="to"/>.</summary>
    /// <param name="half">Half of the thickness, m.</param>
    /// <param name="warm">Specific heat above freezing, and <paramref name="frozen"/> below, J/kgK.</param>
    /// <returns>Seconds; null where what cools it is not cold enough.</returns>
    public static double? Pham(
        double half, double film, double conductivity, double density, double warm, double frozen, double latent, double from, double to,
        double around)
    {
        double mean = 1.8 + (0.263 * to) + (0.105 * around);
        double first = ((from + mean) / 2) - around;
        double second = mean - around;
        return first <= 0 || second <= 0 || to <= around || film <= 0 || conductivity <= 0
            ? null
            : half / film * ((density * warm * (from - mean) / first) + (density * (latent + (frozen * (mean - to))) / second))
                * (1 + (film * half / (2 * conductivity)));
    }
}

internal enum FrozenShape
{
    Slab,
    LongCylinder,
    Ball,
}
