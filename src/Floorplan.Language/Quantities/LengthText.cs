using System.Globalization;

namespace Floorplan.Language.Quantities;

/// <summary>
/// Prints a length: millimetres in metric plans, with one decimal where needed; feet and inches to 1/16 in in feet plans, both always
/// shown (10'-0"), inches only below one foot. Sheets print what <see cref="Tape"/> has rounded.
/// </summary>
internal static class LengthText
{
    private const int Sixteenths = 16;

    /// <summary>For dimensions: <c>2600</c> or <c>8'-6 1/2"</c>.</summary>
    public static string Dimension(Length length, UnitSystem units) => units == UnitSystem.Metric ? Metric(length) : Feet(length);

    /// <summary>For sentences: <c>2600 mm</c> or <c>8'-6 1/2"</c>.</summary>
    public static string Sentence(Length length, UnitSystem units) => units == UnitSystem.Metric ? Metric(length) + " mm" : Feet(length);

    /// <summary>For routes and areas in sentences: <c>7.6 m</c> or <c>24.9 ft</c>.</summary>
    public static string Distance(double millimetres, UnitSystem units) => units == UnitSystem.Metric
        ? (millimetres / 1000).ToString("0.0#", CultureInfo.InvariantCulture) + " m"
        : (millimetres / InchPound.MillimetresPerFoot).ToString("0.0", CultureInfo.InvariantCulture) + " ft";

    private static string Metric(Length length) => length.Millimetres.ToString("0.#", CultureInfo.InvariantCulture);

    private static string Feet(Length length)
    {
        string sign = length.Nanometres < 0 ? "-" : "";
        long total = (long)Math.Round(Math.Abs(length.Nanometres) * Sixteenths / (double)Length.NanometresPerInch);
        long feet = total / (12 * Sixteenths);
        long inches = total / Sixteenths % 12;
        long part = total % Sixteenths;
        long whole = Sixteenths;
        while (part != 0 && part % 2 == 0)
        {
            part /= 2;
            whole /= 2;
        }

        string fraction = part == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" {part}/{whole}");
        if (feet == 0 && inches == 0 && part != 0)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{sign}{part}/{whole}\"");
        }

        return feet == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{sign}{inches}{fraction}\"")
            : string.Create(CultureInfo.InvariantCulture, $"{sign}{feet}'-{inches}{fraction}\"");
    }
}
