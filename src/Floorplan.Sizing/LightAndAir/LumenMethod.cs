namespace Floorplan.Sizing.LightAndAir;

/// <summary>Lamps of a room by the lumen method (CIBSE): N = E A / (F UF MF), K = L W / ((L + W) hm). SI units.</summary>
internal static class LumenMethod
{
    /// <summary>
    /// Utilisation of one open batten by room index; ceiling, walls and floor throw back 70, 50 and 20 % (lighting handbook, public copy).
    /// </summary>
    private static readonly (double Index, double Factor)[] Batten =
        [(0.75, 0.43), (1, 0.49), (1.25, 0.55), (1.5, 0.60), (2, 0.66), (2.5, 0.71), (3, 0.75), (4, 0.80), (5, 0.83)];

    /// <summary>Below the table the last two entries go on in a line, down to this; own assumption.</summary>
    private const double Least = 0.2;

    /// <param name="round">Length round the room; with the area it is L W / (L + W) twice, for rooms of any outline.</param>
    /// <param name="high">From the lamps to the work.</param>
    public static double Index(double area, double round, double high) => round > 0 && high > 0 ? 2 * area / (round * high) : 0;

    public static double Utilisation(double index)
    {
        if (index >= Batten[^1].Index)
        {
            return Batten[^1].Factor;
        }

        int i = Math.Max(1, Array.FindIndex(Batten, b => b.Index > index));
        var (low, high) = (Batten[i - 1], Batten[i]);
        return Math.Max(Least, low.Factor + ((index - low.Index) * (high.Factor - low.Factor) / (high.Index - low.Index)));
    }

    /// <summary>Not rounded.</summary>
    public static double Lamps(double lux, double area, double lumens, double utilisation, double kept)
        => lux * area / (lumens * utilisation * kept);

    public static double Lux(double lamps, double area, double lumens, double utilisation, double kept)
        => lamps * lumens * utilisation * kept / area;
}
