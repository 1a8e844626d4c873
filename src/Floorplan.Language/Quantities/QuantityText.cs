using System.Globalization;
using System.Text;

namespace Floorplan.Language.Quantities;

/// <summary>
/// The one place that prints quantities. For people, in the plan's units: <c>13.4 m²</c>, <c>144 sq ft</c>, <c>82 °C</c>; for text that is
/// to go into a plan, as the language reads it and always with its unit: <c>13.4 m2</c>. Numbers of 100 and more are whole, those of 10
/// and more have one decimal at most, smaller ones those of <see cref="PrintedUnits"/>, and what is below 1 has two figures, so that a
/// small
/// number never prints as zero.
/// </summary>
public static class QuantityText
{
    /// <summary>From here on decimals say nothing to a builder, and from ten on a second one. Our own choice: three figures.</summary>
    private const double WholeFrom = 100;
    private const double OneDecimalFrom = 10;

    /// <summary>Distances from here on, in mm, read better in metres or feet than as a dimension. Our own choice.</summary>
    private const double LongDistanceMm = 3000;

    private const double SecondsPerMinute = 60;
    private const double SecondsPerHour = 3600;
    private const int MostDecimals = 6;

    /// <summary>A value in the base unit of its measure: <c>13.4 m²</c> or <c>144 sq ft</c>.</summary>
    public static string Of(double value, Measure measure, UnitSystem units) => $"{Number(value, measure, units)} {Unit(measure, units)}";

    /// <summary>In both systems, for what belongs to no plan: <c>37 m² (398 sq ft)</c>.</summary>
    public static string Both(double value, Measure measure)
    {
        string metric = Of(value, measure, UnitSystem.Metric);
        string feet = Of(value, measure, UnitSystem.Feet);
        return metric == feet ? metric : $"{metric} ({feet})";
    }

    /// <summary>Fine enough to reckon on with, to three decimals: for the steps of a working.</summary>
    public static string Fine(double value, Measure measure, UnitSystem units)
    {
        var unit = PrintedUnits.Of(measure, units);
        return $"{Exact(unit.From(value))} {unit.Symbol}";
    }

    /// <summary>From mm, fine enough to reckon on with: <c>2.285 m</c> or <c>7.5 ft</c>.</summary>
    public static string FineDistance(double millimetres, UnitSystem units) => units == UnitSystem.Metric
        ? Exact(millimetres / 1000) + " m"
        : Exact(millimetres / InchPound.MillimetresPerFoot) + " ft";

    /// <summary>For columns whose heading has the unit.</summary>
    public static string Number(double value, Measure measure, UnitSystem units)
    {
        var unit = PrintedUnits.Of(measure, units);
        return Rounded(unit.From(value), unit.Decimals);
    }

    /// <summary>For headings: <c>m²</c> or <c>sq ft</c>.</summary>
    public static string Unit(Measure measure, UnitSystem units) => PrintedUnits.Of(measure, units).Symbol;

    /// <summary>For text that is to go into a plan: <c>13.4 m2</c>.</summary>
    /// <exception cref="ArgumentException">No statement takes such a quantity: a slip of the caller.</exception>
    public static string Written(double value, Measure measure, UnitSystem units)
    {
        string symbol = PrintedUnits.Of(measure, units).Written
            ?? throw new ArgumentException($"the language has no unit for {measure}", nameof(measure));
        return $"{Number(value, measure, units)} {symbol}";
    }

    /// <summary>
    /// What the plan says, for people: as written where the plan's units have that unit (<c>0.9 kg</c>, <c>230 V</c>), else in the
    /// plan's units.
    /// </summary>
    /// <param name="measure">What it measures, where the unit alone does not tell: <c>m3/h</c> is of air or of water.</param>
    public static string Of(Quantity quantity, UnitSystem units, Measure? measure = null)
    {
        string symbol = quantity.Unit.Symbol;
        if (quantity.Unit.Kind == QuantityKind.Rate
            && symbol.Split('/') is [var thing, var time]
            && UnitTable.Find(thing) is { Kind: QuantityKind.Mass } mass
            && !WrittenUnits.BelongsTo(thing, units))
        {
            return $"{Of(mass.ToBase((double)quantity.Number), Measure.Mass, units)}/{time}";
        }

        return !WrittenUnits.BelongsTo(symbol, units) && (measure ?? MeasureOf(quantity.Unit.Kind)) is { } known
            ? Of(quantity.Base, known, units)
            : string.Create(CultureInfo.InvariantCulture, $"{quantity.Number} {WrittenUnits.Symbol(symbol)}").TrimEnd();
    }

    /// <summary>Seconds below two minutes, minutes below two hours, then hours: <c>40 s</c>, <c>90 min</c>, <c>4.5 h</c>.</summary>
    public static string Time(double seconds) => Math.Abs(seconds) < 2 * SecondsPerMinute ? Rounded(seconds, 0) + " s"
        : Math.Abs(seconds) < 2 * SecondsPerHour ? Rounded(seconds / SecondsPerMinute, 0) + " min"
        : Rounded(seconds / SecondsPerHour, 1) + " h";

    /// <summary>Of one piece of work, for comparing: seconds below ten minutes, then minutes: <c>162 s</c>.</summary>
    public static string WorkTime(double seconds) => Math.Abs(seconds) < 10 * SecondsPerMinute
        ? Rounded(seconds, 0) + " s"
        : Rounded(seconds / SecondsPerMinute, 1) + " min";

    /// <summary>Things in a time, by the hour: <c>118 fish/h</c>.</summary>
    public static string Rate(double perSecond, string things) => $"{Rounded(perSecond * SecondsPerHour, 1)} {things}/h";

    /// <summary><c>1 hand sink</c>, <c>3 hand sinks</c>, <c>2.5 hours</c>.</summary>
    public static string Count(double number, string one, string? many = null)
        => $"{Rounded(number, 1)} {(number == 1 ? one : many ?? one + "s")}";

    /// <summary>Two decimals always, in the plan's own currency, which it does not name.</summary>
    public static string Money(double amount) => amount.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>A number without a unit, such as a factor or an index.</summary>
    public static string Plain(double value, int decimals = 2) => Rounded(value, decimals);

    /// <summary>A number to compare at a glance: whole from 10 on, to a tenth below.</summary>
    public static string Coarse(double value) => value.ToString(value < 10 ? "0.#" : "0", CultureInfo.InvariantCulture);

    /// <summary>A size in a sentence, which may go into a plan as it is: <c>2600 mm</c> or <c>8'-6 1/2"</c>.</summary>
    public static string Length(Length length, UnitSystem units) => LengthText.Sentence(length, units);

    /// <summary>The same without its unit: <c>2600</c> or <c>8'-6 1/2"</c>. Sheets print dimensions with <see cref="Tape"/>.</summary>
    public static string Bare(Length length, UnitSystem units) => LengthText.Dimension(length, units);

    /// <summary>
    /// A size that a thing is bought by, such as a pipe of <c>33.7</c> or <c>5/16"</c>: as the plan says it, for the next size of a tape
    /// is another pipe.
    /// </summary>
    public static string Bought(Length length, UnitSystem units) => LengthText.Dimension(length, units).Replace(' ', '\u00A0');

    /// <summary>Several sides of one thing: <c>50 × 50 × 3 mm</c> or <c>2" × 2" × 1/8"</c>.</summary>
    public static string Sizes(UnitSystem units, params ReadOnlySpan<Length> sides)
    {
        var text = new StringBuilder();
        foreach (var side in sides)
        {
            text.Append(text.Length == 0 ? "" : " × ").Append(LengthText.Dimension(side, units));
        }

        return text.Append(units == UnitSystem.Metric ? " mm" : "").ToString();
    }

    /// <summary>For headings over lengths as numbers: <c>mm</c> or <c>in</c>.</summary>
    public static string LengthUnit(UnitSystem units) => units == UnitSystem.Metric ? "mm" : "in";

    /// <summary>What long distances are in: <c>m</c> or <c>ft</c>.</summary>
    public static string DistanceUnit(UnitSystem units) => units == UnitSystem.Metric ? "m" : "ft";

    /// <summary>For walks and pipes, in mm: <c>7.6 m</c> or <c>24.9 ft</c>.</summary>
    public static string Distance(double millimetres, UnitSystem units) => LengthText.Distance(millimetres, units);

    /// <summary>A size below 3 m, a distance from there on.</summary>
    public static string SizeOrDistance(double millimetres, UnitSystem units) => Math.Abs(millimetres) >= LongDistanceMm
        ? LengthText.Distance(millimetres, units)
        : LengthText.Sentence(Quantities.Length.FromMillimetres(millimetres), units);

    /// <summary>A level of the floor: <c>±0</c>, <c>-24</c>, <c>-7/8"</c>; as a tape shows it.</summary>
    public static string Level(Length level, UnitSystem units)
    {
        var rounded = Tape.For(units).Round(level);
        return rounded == Quantities.Length.Zero
            ? "±0"
            : (rounded > Quantities.Length.Zero ? "+" : "") + LengthText.Dimension(rounded, units);
    }

    private static string Exact(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Rounded(double value, int decimals)
    {
        int places = Math.Abs(value) >= WholeFrom ? 0 : Math.Abs(value) >= OneDecimalFrom ? Math.Min(decimals, 1) : decimals;
        while (Math.Abs(value) < 1 && places < MostDecimals && Math.Abs(value) < Math.Pow(10, 1 - places))
        {
            places++;
        }

        string text = Math.Round(value, places, MidpointRounding.AwayFromZero)
            .ToString("0." + new string('#', places), CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    private static Measure? MeasureOf(QuantityKind kind) => kind switch
    {
        QuantityKind.Area => Measure.Area,
        QuantityKind.Volume => Measure.Liquid,
        QuantityKind.Flow => Measure.Flow,
        QuantityKind.AirFlow => Measure.AirFlow,
        QuantityKind.Mass => Measure.Mass,
        QuantityKind.Temperature => Measure.Temperature,
        QuantityKind.Power => Measure.Heat,
        QuantityKind.Illuminance => Measure.Illuminance,
        QuantityKind.LuminousFlux => Measure.LuminousFlux,
        QuantityKind.Pressure => Measure.Pressure,
        QuantityKind.Speed => Measure.Speed,
        _ => null,
    };
}
