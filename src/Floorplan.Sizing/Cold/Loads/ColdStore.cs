namespace Floorplan.Sizing.Cold.Loads;

/// <summary>Small sums of a cold store's load; W, m, C, h.</summary>
internal static class ColdStore
{
    /// <summary>W of one person at work; ASHRAE Refrigeration (from memory), within 3 % of FAO's 440 W at -30 C.</summary>
    public static double OfPerson(double celsius) => Math.Max(0, 272 - (6 * celsius));

    /// <summary>Through one side.</summary>
    public static double Through(double transmittance, double area, double difference) => transmittance * area * difference;

    /// <summary>Average of the day of what is only there for some hours.</summary>
    public static double OverDay(double watts, double hours) => watts * hours / 24;

    /// <summary>Average of the day for what is cooled in it.</summary>
    /// <param name="heat">kJ out of each kg.</param>
    public static double OfProduct(double kilograms, double heat) => kilograms * heat * 1000 / (24 * 3600);

    /// <summary>What the unit must do while it runs.</summary>
    /// <param name="load">Average of the day.</param>
    /// <param name="safety">0.1 for ten percent more.</param>
    public static double Duty(double load, double safety, double hours) => load * (1 + safety) * 24 / hours;
}
