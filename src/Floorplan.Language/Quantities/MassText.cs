using System.Globalization;

namespace Floorplan.Language.Quantities;

/// <summary>Weights as people write them.</summary>
public static class MassText
{
    /// <summary>Of what hands lift, to a tenth: <c>12.5 kg</c> or <c>27.6 lb</c>.</summary>
    public static string InHand(double kilograms, UnitSystem units) => units == UnitSystem.Metric
        ? kilograms.ToString("0.#", CultureInfo.InvariantCulture) + " kg"
        : (kilograms / InchPound.KilogramsPerPound).ToString("0.#", CultureInfo.InvariantCulture) + " lb";
}
