namespace Floorplan.Sizing.Power.Formulas;

/// <summary>What of the loads of a small shop or works runs at once, by British practice for 230/400 V.</summary>
internal static class Diversity
{
    /// <summary>Of lamps.</summary>
    public const double Light = 0.9;

    /// <summary>Motors and cookers: the largest whole, 80 % of the second, 60 % of the rest.</summary>
    public static double Machines(IEnumerable<double> loads) => Of(loads, 1, 0.8, 0.6);

    /// <summary>Water heated as it flows: the two largest whole, a quarter of the rest.</summary>
    public static double InstantHeaters(IEnumerable<double> loads) => Of(loads, 1, 1, 0.25);

    /// <summary>The largest whole, three quarters of the rest.</summary>
    public static double Sockets(IEnumerable<double> loads) => Of(loads, 1, 0.75, 0.75);

    private static double Of(IEnumerable<double> loads, double first, double second, double rest)
        => loads.OrderDescending().Select((load, i) => load * (i switch { 0 => first, 1 => second, _ => rest })).Sum();
}
