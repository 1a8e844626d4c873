using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Tables;

/// <summary>How much less a PVC cable carries in warm air, and beside other loaded cables.</summary>
internal static class IecFactors
{
    public static readonly Source Ambient = new(
        "IEC 60364-5-52 Table B.52.14, PVC, as BS 7671 Table 4B1", Origin.FoundInSecondaryCopy, Force.ModelCode);

    public static readonly Source Group = new(
        "IEC 60364-5-52 Table B.52.17, bunched, as BS 7671 Table 4C1", Origin.FoundInSecondaryCopy, Force.ModelCode);

    /// <summary>60 C from memory.</summary>
    private static readonly (double UpTo, double Factor)[] OfAir =
        [(30, 1), (35, 0.94), (40, 0.87), (45, 0.79), (50, 0.71), (55, 0.61), (60, 0.50)];

    private static readonly (int UpTo, double Factor)[] Bunched =
    [
        (1, 1), (2, 0.80), (3, 0.70), (4, 0.65), (5, 0.60), (6, 0.57), (7, 0.54), (8, 0.52), (9, 0.50), (12, 0.45), (16, 0.41), (20, 0.38),
    ];

    /// <summary>No credit for cool air; 0 where no cable of the table may be used.</summary>
    public static double OfAmbient(double celsius) => OfAir.FirstOrDefault(a => celsius <= a.UpTo).Factor;

    /// <summary>More than 20 are taken as 20.</summary>
    public static double OfGroup(int circuits) => Bunched.FirstOrDefault(a => circuits <= a.UpTo, Bunched[^1]).Factor;
}
