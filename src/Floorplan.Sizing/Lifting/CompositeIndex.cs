namespace Floorplan.Sizing.Lifting;

/// <summary>
/// The composite lifting index of one job with several lifts: DHHS (NIOSH) 94-110, section 2.4. The hardest lift counts whole, and each
/// further one adds what its lifts a minute make the rest harder.
/// </summary>
public static class CompositeIndex
{
    /// <summary>Infinite where the lifts together are more often than the equation allows.</summary>
    /// <param name="lifts">All of one duration, each with its own lifts a minute; hands below and above 30 in are told apart lift by
    /// lift.</param>
    public static double Of(IReadOnlyList<Lift> lifts)
    {
        double index = 0, perMinute = 0;
        foreach (var lift in lifts.OrderByDescending(LiftingEquation.Index))
        {
            double origin = lift.OriginIn ?? lift.VerticalIn;

            // Before the first lift there is none, and it counts whole.
            double before = perMinute == 0 ? 0 : 1 / LiftingFrequency.Multiplier(perMinute, lift.Duration, origin);
            perMinute += lift.PerMinute;
            double multiplier = LiftingFrequency.Multiplier(perMinute, lift.Duration, origin);
            if (multiplier == 0)
            {
                return double.PositiveInfinity;
            }

            index += LiftingEquation.Index(lift with { PerMinute = 0 }) * ((1 / multiplier) - before);
        }

        return index;
    }
}
