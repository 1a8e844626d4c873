namespace Floorplan.Sizing.Simulation.Line;

/// <summary>Times of the simulation: whole microseconds, so that sums are exact and runs repeat.</summary>
public static class Ticks
{
    public const long Second = 1_000_000;
    public const long Minute = 60 * Second;
    public const long Hour = 60 * Minute;

    public static long FromSeconds(double seconds) => checked((long)Math.Round(seconds * Second));

    public static double Seconds(long ticks) => ticks / (double)Second;

    public static double Hours(long ticks) => ticks / (double)Hour;
}
