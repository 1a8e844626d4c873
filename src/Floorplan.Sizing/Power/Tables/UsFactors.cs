using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Tables;

/// <summary>How much less a conductor carries in warm air, and beside others.</summary>
internal static class UsFactors
{
    public static readonly Source Source = new("NEC 310.15(B) and (C), conductors for 75 C", Origin.FoundInSecondaryCopy, Force.ModelCode);

    /// <summary>Up to so many C; from 51 C on from memory.</summary>
    private static readonly (double UpTo, double Factor)[] Ambient =
        [(30, 1), (35, 0.94), (40, 0.88), (45, 0.82), (50, 0.75), (55, 0.67), (60, 0.58), (65, 0.47), (70, 0.33)];

    /// <summary>Loaded conductors in one pipe; from 10 on from memory.</summary>
    private static readonly (int UpTo, double Factor)[] Together = [(3, 1), (6, 0.80), (9, 0.70), (20, 0.50), (30, 0.45), (40, 0.40)];

    /// <summary>No credit for cool air; 0 where no conductor of the table may be used.</summary>
    public static double OfAmbient(double celsius) => Ambient.FirstOrDefault(a => celsius <= a.UpTo).Factor;

    public static double OfGroup(int conductors) => Together.FirstOrDefault(a => conductors <= a.UpTo, (UpTo: 0, Factor: 0.35)).Factor;
}
