using Floorplan.Language.Quantities;

namespace Floorplan.Language.Parsing;

/// <summary>
/// The most that is read of each kind: far above any small unit, so that a slip of a digit or a unit is told and sums stay exact. Own
/// assumptions, but for 1,000 V, where low voltage ends (IEC 60038; from memory), and 100,000 lux, about full daylight (common practice,
/// no source).
/// </summary>
public static class QuantityBounds
{
    /// <summary>What may lie below 0 has a bound there too; lengths have a bound of their own.</summary>
    public const decimal ColdestCelsius = -100;

    /// <summary>Rates and counts are of anything.</summary>
    public static IReadOnlyList<Quantity> Most { get; } =
    [
        Of(10_000, "m2"), Of(1_000, "m3"), Of(100_000, "m3/h"), Of(60_000, "cfm"), Of(8_766, "h"), Of(1_000, "t"),
        Of(500, "C"), Of(10_000, "kW"), Of(1_000, "V"), Of(10_000, "A"), Of(100_000, "lux"), Of(1_000_000, "lm"),
        Of(1_000, "%"), Of(1_000, "bar"),
        Of(100, "m/s"), new(1_000_000, UnitTable.Rate("things/h")!), new(1_000_000, UnitTable.Count("things")),
    ];

    /// <summary>The bound that a quantity goes beyond; null when it is within.</summary>
    public static Quantity? Broken(Quantity quantity)
    {
        if (quantity.Unit.Kind == QuantityKind.Temperature && quantity.Base < (double)ColdestCelsius)
        {
            return Of(ColdestCelsius, "C");
        }

        foreach (var most in Most)
        {
            if (most.Unit.Kind == quantity.Unit.Kind)
            {
                return quantity.Base > most.Base * (1 + 1e-9) ? most : null;
            }
        }

        return null;
    }

    private static Quantity Of(decimal number, string unit) => new(number, UnitTable.Find(unit)!);
}
