using System.Globalization;

namespace Floorplan.Sizing.Lifting;

/// <summary>
/// The revised NIOSH lifting equation in its US customary form: DHHS (NIOSH) 94-110, 1994, revised 2021 (Waters and others, 1993).
/// It does not cover carrying, one hand, sitting or kneeling, live or unstable loads, cold rooms, or more than eight hours.
/// </summary>
public static class LiftingEquation
{
    private const double LoadConstant = 51;

    /// <summary>The recommended weight limit, lb; zero where the equation allows no lift at all.</summary>
    public static double RecommendedLb(Lift lift) => Product(lift, Horizontal(lift.HorizontalIn), m => m);

    /// <summary>Load over recommended weight; infinite where no lift is allowed.</summary>
    public static double Index(Lift lift) => lift.LoadLb / RecommendedLb(lift);

    /// <summary>
    /// The recommended weight limit as a product of numbers: load constant, horizontal, vertical, travel, twist, frequency, hold.
    /// </summary>
    public static string Working(Lift lift)
    {
        var factors = new List<double>();
        Product(lift, Horizontal(lift.HorizontalIn), m =>
        {
            factors.Add(m);
            return m;
        });
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{LoadConstant} lb x {string.Join(" x ", factors.Select(f => f.ToString("0.###", CultureInfo.InvariantCulture)))}");
    }

    /// <summary>As the manual prints it: multipliers rounded to two decimals first, and the limit to one.</summary>
    public static double PrintedRecommendedLb(Lift lift) =>
        Math.Round(
            Product(lift, PrintedHorizontal(lift.HorizontalIn), m => Math.Round(m, 2, MidpointRounding.AwayFromZero)), 1,
            MidpointRounding.AwayFromZero);

    private static double Product(Lift lift, double horizontal, Func<double, double> round) =>
        LoadConstant * round(horizontal) * round(Vertical(lift.VerticalIn)) * round(Travel(lift.TravelIn)) * round(Twist(lift.TwistDegrees))
        * round(LiftingFrequency.Multiplier(lift.PerMinute, lift.Duration, lift.OriginIn ?? lift.VerticalIn)) * round(Hold(lift));

    private static double Horizontal(double inches) => inches > 25 ? 0 : 10 / Math.Max(10, inches);

    /// <summary>The manual's table departs from its formula in two rows; its examples go by the table.</summary>
    private static double PrintedHorizontal(double inches) => inches switch
    {
        22 => 0.46,
        23 => 0.44,
        _ => Horizontal(inches),
    };

    private static double Vertical(double inches) => inches is < 0 or > 70 ? 0 : 1 - (0.0075 * Math.Abs(inches - 30));

    private static double Travel(double inches) => inches > 70 ? 0 : 0.82 + (1.8 / Math.Max(10, inches));

    private static double Twist(double degrees) => degrees > 135 ? 0 : 1 - (0.0032 * degrees);

    private static double Hold(Lift lift) => (lift.Coupling, lift.VerticalIn < 30) switch
    {
        (Coupling.Poor, _) => 0.9,
        (Coupling.Fair, true) => 0.95,
        _ => 1,
    };
}
