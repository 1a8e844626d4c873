using Floorplan.Sizing.Power.Tables;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power.Formulas;

/// <summary>Conductors and breakers by US practice.</summary>
internal static class UsConductor
{
    /// <summary>For loads that run three hours or more, and for the conductor of a motor.</summary>
    public const double Continuous = 1.25;

    /// <summary>Most that the breaker of a motor may be, in full-load currents; then the next size up.</summary>
    public const double MotorBreaker = 2.5;

    /// <summary>Terminals up to here count as 60 C.</summary>
    public const double SmallCircuit = 100;

    public static readonly Source MotorSource = new(
        "NEC 430.22 and 430.52: conductor 125 %, breaker to 250 % of the full-load current, next size up", Origin.FoundInSecondaryCopy,
        Force.ModelCode);

    public static readonly Source Terminals = new(
        "NEC 110.14(C)(1): 60 C terminals for circuits up to 100 A", Origin.FromMemory, Force.ModelCode);

    /// <summary>In A that the conductor carries, by the column of its terminals.</summary>
    /// <param name="warm">True for the 75 C column.</param>
    /// <param name="factor">For warm air and other conductors, on the rating of the wire itself, which is 75 C.</param>
    public static double Carries(CopperAwg size, bool warm, double factor) => Math.Min(warm ? size.At75 : size.At60, size.At75 * factor);

    /// <summary>The smallest that carries so much; null above the table.</summary>
    public static CopperAwg? Smallest(double amperes, bool warm, double factor = 1)
        => CopperAwg.All.FirstOrDefault(s => amperes <= Carries(s, warm, factor) * (1 + 1e-9));

    /// <summary>The smallest for a circuit: it carries the load, and its breaker guards it. A motor has its own overload device.</summary>
    /// <param name="needed">In A, with the 1.25.</param>
    /// <param name="breaker">In A; null where no breaker fits.</param>
    /// <param name="guardsItself">A motor alone.</param>
    public static CopperAwg? For(double needed, double? breaker, bool guardsItself, double factor)
    {
        bool warm = Math.Max(needed, guardsItself ? 0 : breaker ?? 0) > SmallCircuit;

        // Above 100 A the warmer column holds; yet a larger circuit never gets less copper than one of 100 A.
        return breaker is not { } rating ? null : CopperAwg.All.FirstOrDefault(s
            => (!warm || s.At60 >= SmallCircuit)
            && needed <= Carries(s, warm, factor) * (1 + 1e-9)
            && (guardsItself || (rating <= Carries(s, warm, factor) * (1 + 1e-9) && rating <= s.LargestBreaker)));
    }
}
