using Floorplan.Language.Quantities;

namespace Floorplan.Sizing.Working;

/// <summary>Numbers of a working, fine enough to calculate with, in the plan's units.</summary>
internal static class WorkingText
{
    /// <summary>From mm: <c>2.285 m</c> or <c>7.5 ft</c>.</summary>
    public static string Long(double millimetres, UnitSystem units) => QuantityText.FineDistance(millimetres, units);

    /// <summary>From kg/m2: <c>9.81 kg/m²</c> or <c>2.01 lb/sq ft</c>.</summary>
    public static string Areal(double value, UnitSystem units) => QuantityText.Fine(value, Measure.FloorLoad, units);

    /// <summary>From kg/m3: <c>40 kg/m³</c> or <c>2.5 lb/cu ft</c>.</summary>
    public static string Density(double value, UnitSystem units) => QuantityText.Of(value, Measure.Density, units);

    /// <summary>Terms of a sum; of many the first few and how many more there are.</summary>
    public static string Sum(IReadOnlyList<string> terms)
    {
        const int Most = 8;
        return terms.Count <= Most + 1
            ? string.Join(" + ", terms)
            : string.Create(
                System.Globalization.CultureInfo.InvariantCulture, $"{string.Join(" + ", terms.Take(Most))} + {terms.Count - Most} more");
    }
}
