using Floorplan.Language.Quantities;

namespace Floorplan.Sizing.Simulation.Line;

/// <summary>Times of the simulation: whole microseconds, so that sums are exact and runs repeat.</summary>
public static class Ticks
{
    public const long Second = 1_000_000;
    public const long Minute = 60 * Second;
    public const long Hour = 60 * Minute;

    public static long FromSeconds(double seconds) => checked((long)Math.Round(seconds * Second));

    /// <summary>A time that the plan says; null where it says none.</summary>
    public static long? Of(Quantity? said)
        => said is { Unit.Kind: QuantityKind.Time } time ? FromSeconds(Math.Max(0, time.Base)) : null;

    public static double Minutes(long ticks) => ticks / (double)Minute;

    public static double Seconds(long ticks) => ticks / (double)Second;

    public static double Hours(long ticks) => ticks / (double)Hour;
}
