using Floorplan.Language.Quantities;

namespace Floorplan.Sizing.Working;

/// <summary>Numbers of a working, fine enough to reckon with, in the plan's units.</summary>
internal static class WorkingText
{
    private const double CubicFootPound = InchPound.CubicMetresPerCubicFoot / InchPound.KilogramsPerPound;

    /// <summary>From mm: <c>2.285 m</c> or <c>7.5 ft</c>.</summary>
    public static string Long(double millimetres, UnitSystem units) => units == UnitSystem.Metric
        ? QuantityText.Plain(millimetres / 1000, 3) + " m"
        : QuantityText.Plain(millimetres / InchPound.MillimetresPerFoot, 3) + " ft";

    /// <summary>From kg/m2: <c>9.81 kg/m²</c> or <c>2.01 lb/sq ft</c>.</summary>
    public static string Areal(double value, UnitSystem units) =>
        $"{QuantityText.Plain(PrintedUnits.Of(Measure.FloorLoad, units).From(value), 2)} {QuantityText.Unit(Measure.FloorLoad, units)}";

    /// <summary>From kg/m3: <c>40 kg/m³</c> or <c>2.5 lb/cu ft</c>.</summary>
    public static string Density(double value, UnitSystem units) => units == UnitSystem.Metric
        ? QuantityText.Plain(value, 0) + " kg/m³"
        : QuantityText.Plain(value * CubicFootPound, 1) + " lb/cu ft";

    /// <summary>Terms of a sum; of many the first few and how many more there are.</summary>
    public static string Sum(IReadOnlyList<string> terms)
    {
        const int Most = 8;
        return terms.Count <= Most + 1 ? string.Join(" + ", terms) : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{string.Join(" + ", terms.Take(Most))} + {terms.Count - Most} more");
    }
}
