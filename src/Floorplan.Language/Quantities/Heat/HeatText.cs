namespace Floorplan.Language.Quantities.Heat;

/// <summary>Prints how well walls and foods take heat, fine enough to reckon on with.</summary>
public static class HeatText
{
    private const double SquareFoot = InchPound.SquareMetresPerSquareFoot;

    /// <summary>One degree Fahrenheit in K.</summary>
    private const double Degree = 1 / 1.8;

    /// <summary>Of one Btu/h on a square foot for a degree Fahrenheit, in W/m2K.</summary>
    private const double Film = InchPound.WattsPerBtuPerHour / SquareFoot / Degree;

    /// <summary>A Btu for a pound and degree Fahrenheit, by definition.</summary>
    private const double KilojoulesPerBtuPound = 4.1868;

    /// <summary>From W/m2K.</summary>
    public static string Transmittance(double value, UnitSystem units) => units == UnitSystem.Metric
        ? QuantityText.Plain(value, 3) + " W/m²K"
        : QuantityText.Plain(value / Film, 3) + " Btu/h sq ft °F";

    /// <summary>From m2K/W.</summary>
    public static string Resistance(double value, UnitSystem units) => units == UnitSystem.Metric
        ? QuantityText.Plain(value, 3) + " m²K/W"
        : QuantityText.Plain(value * Film, 3) + " h sq ft °F/Btu";

    /// <summary>From W/mK, for thicknesses as <see cref="Thick"/> prints them.</summary>
    public static string Conductivity(double value, UnitSystem units) => units == UnitSystem.Metric
        ? QuantityText.Plain(value, 3) + " W/mK"
        : QuantityText.Plain(value / Film / (InchPound.MillimetresPerInch / 1000), 3) + " Btu in/h sq ft °F";

    /// <summary>From mm.</summary>
    public static string Thick(double millimetres, UnitSystem units) => units == UnitSystem.Metric
        ? QuantityText.Plain(millimetres / 1000, 3) + " m"
        : QuantityText.Plain(millimetres / InchPound.MillimetresPerInch, 3) + " in";

    /// <summary>From kJ/kgK.</summary>
    public static string SpecificHeat(double value, UnitSystem units) => units == UnitSystem.Metric
        ? QuantityText.Plain(value, 2) + " kJ/kgK"
        : QuantityText.Plain(value / KilojoulesPerBtuPound, 3) + " Btu/lb °F";

    /// <summary>From kJ/kg.</summary>
    public static string PerWeight(double value, UnitSystem units) => units == UnitSystem.Metric
        ? QuantityText.Plain(value, 1) + " kJ/kg"
        : QuantityText.Plain(value / KilojoulesPerBtuPound * 1.8, 1) + " Btu/lb";

    /// <summary>From W/m2.</summary>
    public static string PerArea(double value, UnitSystem units) => units == UnitSystem.Metric
        ? QuantityText.Plain(value, 1) + " W/m²"
        : QuantityText.Plain(value * SquareFoot / InchPound.WattsPerBtuPerHour, 1) + " Btu/h sq ft";
}
