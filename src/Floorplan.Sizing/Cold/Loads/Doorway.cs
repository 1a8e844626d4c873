using Floorplan.Sizing.LightAndAir;

namespace Floorplan.Sizing.Cold.Loads;

/// <summary>
/// Warm air through the open door of a cold room: Gosney and Olama 1975, as ASHRAE Refrigeration 2006 chapter 13 gives it (read in a
/// public copy).
/// </summary>
internal static class Doorway
{
    private const double Gravity = 9.80665;

    /// <summary>W while the door stands open; nothing where the other side is no warmer.</summary>
    /// <param name="width">Of the door and its height, m.</param>
    public static double WhileOpen(
        double width, double height, (double Celsius, double Humidity) warm, (double Celsius, double Humidity) cold)
    {
        var (hot, light) = Air(warm);
        var (cool, heavy) = Air(cold);
        double heat = hot - cool;
        return heat <= 0 || light >= heavy
            ? 0
            : 1000 * 0.221 * width * height * heat * heavy * Math.Sqrt(1 - (light / heavy)) * Math.Sqrt(Gravity * height)
                * Factor(light, heavy);
    }

    /// <summary>What is in such air, kJ for each kg of it dry, and what it weighs, kg/m3.</summary>
    public static (double Heat, double Density) Air((double Celsius, double Humidity) air)
    {
        double water = Psychrometrics.Water(air.Celsius, air.Humidity);
        return (Psychrometrics.Heat(air.Celsius, water), Psychrometrics.Density(air.Celsius, water));
    }

    /// <summary>Fm: the two streams in the doorway are of unlike weight.</summary>
    public static double Factor(double light, double heavy) => Math.Pow(2 / (1 + Math.Cbrt(heavy / light)), 1.5);

    /// <summary>How much of the day the door stands open, 0 to 1.</summary>
    /// <param name="each">Seconds for each passage.</param>
    /// <param name="stands">Minutes that it stands open beside.</param>
    public static double OpenShare(double passages, double each, double stands)
        => Math.Min(1, ((passages * each) + (60 * stands)) / (24 * 3600));

    /// <summary>How much of the full flow gets going: less where the air on both sides differs much.</summary>
    public static double FlowFactor(double difference) => difference > 11 ? 0.8 : 1.1;
}
