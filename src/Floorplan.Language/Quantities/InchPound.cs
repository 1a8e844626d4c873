namespace Floorplan.Language.Quantities;

/// <summary>Inch-pound units in metric ones, exact by definition (NIST Special Publication 811, 2008, appendix B).</summary>
public static class InchPound
{
    public const double MillimetresPerInch = 25.4;
    public const double MillimetresPerFoot = 304.8;
    public const double SquareMetresPerSquareFoot = 0.3048 * 0.3048;
    public const double CubicMetresPerCubicFoot = 0.3048 * 0.3048 * 0.3048;
    public const double CubicMetresPerSecondOfCubicFootPerMinute = CubicMetresPerCubicFoot / 60;
    public const double KilogramsPerPound = 0.45359237;

    /// <summary>A pound-force (standard gravity 9.80665 m/s2) on a square inch.</summary>
    public const double PascalsPerPoundPerSquareInch = KilogramsPerPound * 9.80665 / (0.0254 * 0.0254);

    /// <summary>Mile of 5280 ft.</summary>
    public const double MetresPerSecondOfMilePerHour = 5280 * 0.3048 / 3600;

    /// <summary>International Table Btu of 1055.055 852 62 J.</summary>
    public const double WattsPerBtuPerHour = 1055.05585262 / 3600;

    /// <summary>US liquid gallon of 231 cubic inches.</summary>
    public const double CubicMetresPerGallon = 231 * 0.0254 * 0.0254 * 0.0254;

    public static double Fahrenheit(double celsius) => (celsius * 1.8) + 32;

    public static double Celsius(double fahrenheit) => (fahrenheit - 32) / 1.8;
}
