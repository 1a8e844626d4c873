namespace Floorplan.Language.Quantities;

/// <summary>
/// An exact length: a whole number of nanometres. 1/64 in is 396 875 nm, so both inch fractions and
/// millimetres are exact and a chain of dimensions always adds up.
/// </summary>
public readonly record struct Length(long Nanometres) : IComparable<Length>
{
    public const long NanometresPerMillimetre = 1_000_000;
    public const long NanometresPerInch = 25_400_000;

    public static Length Zero => default;

    /// <summary>For geometry and drawing; exact up to about 9 000 km.</summary>
    public double Millimetres => Nanometres / (double)NanometresPerMillimetre;

    public double Metres => Millimetres / 1000;

    public double Inches => Nanometres / (double)NanometresPerInch;

    /// <summary>Rounds to the nearest nanometre.</summary>
    public static Length FromMillimetres(double millimetres) => new((long)Math.Round(millimetres * NanometresPerMillimetre));

    /// <summary>Rounds to the nearest nanometre.</summary>
    public static Length FromInches(double inches) => new((long)Math.Round(inches * NanometresPerInch));

    public static Length operator +(Length a, Length b) => new(a.Nanometres + b.Nanometres);

    public static Length operator -(Length a, Length b) => new(a.Nanometres - b.Nanometres);

    public static Length operator -(Length a) => new(-a.Nanometres);

    public static Length operator *(Length a, long factor) => new(a.Nanometres * factor);

    public static Length operator /(Length a, long divisor) => new(a.Nanometres / divisor);

    public static bool operator <(Length a, Length b) => a.Nanometres < b.Nanometres;

    public static bool operator >(Length a, Length b) => a.Nanometres > b.Nanometres;

    public static bool operator <=(Length a, Length b) => a.Nanometres <= b.Nanometres;

    public static bool operator >=(Length a, Length b) => a.Nanometres >= b.Nanometres;

    public static Length Min(Length a, Length b) => a <= b ? a : b;

    public static Length Max(Length a, Length b) => a >= b ? a : b;

    public static Length Abs(Length a) => new(Math.Abs(a.Nanometres));

    public int CompareTo(Length other) => Nanometres.CompareTo(other.Nanometres);
}
