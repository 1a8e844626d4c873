namespace Floorplan.Sizing.Weights.Crane;

/// <summary>Four legs of one length from one hook to four corners.</summary>
internal static class SlingLegs
{
    /// <summary>Standard gravity, m/s2.</summary>
    public const double Gravity = 9.80665;

    /// <summary>
    /// Of a leg above level, in degrees; null where it is too short to reach. The hook is taken to hang over the middle of the corners.
    /// </summary>
    /// <param name="leg">Its length.</param>
    /// <param name="apart">Corners along, in the same unit.</param>
    /// <param name="apartAcross">Corners across, in the same unit.</param>
    public static double? Angle(double leg, double apart, double apartAcross)
    {
        double reach = double.Hypot(apart, apartAcross) / 2;
        return leg > reach ? double.RadiansToDegrees(Math.Acos(reach / leg)) : null;
    }

    /// <summary>In one leg, N.</summary>
    /// <param name="kilograms">That its corner carries.</param>
    /// <param name="degrees">Above level.</param>
    public static double Force(double kilograms, double degrees) => kilograms * Gravity / Math.Sin(double.DegreesToRadians(degrees));

    /// <summary>In a leg where two on a diagonal carry all, as lifting practice has it for a stiff load, N.</summary>
    public static double PairForce(double whole, double degrees) => Force(whole / 2, degrees);
}
