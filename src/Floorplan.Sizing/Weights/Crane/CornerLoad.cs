namespace Floorplan.Sizing.Weights.Crane;

/// <summary>How a weight that does not lie in the middle is shared by four corners, level and lifted or set down together.</summary>
/// <remarks>
/// Statics: moments about both middle lines. With four stiff supports the shares are not certain; a little twist moves weight from one
/// diagonal pair to the other, so that lifting gear is chosen for <see cref="SlingLegs.PairForce"/>.
/// </remarks>
internal static class CornerLoad
{
    /// <param name="whole">kg.</param>
    /// <param name="off">From the middle towards this corner, along.</param>
    /// <param name="apart">Corners along, in the same unit.</param>
    /// <param name="offAcross">From the middle towards this corner, across.</param>
    /// <param name="apartAcross">Corners across, in the same unit.</param>
    /// <returns>kg; less than zero where the weight lies so far out that this corner is lifted off.</returns>
    public static double Of(double whole, double off, double apart, double offAcross, double apartAcross)
        => whole / 4 * (1 + (2 * off / apart)) * (1 + (2 * offAcross / apartAcross));
}
