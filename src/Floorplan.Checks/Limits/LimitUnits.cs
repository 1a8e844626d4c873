using Floorplan.Language.Quantities;
using Floorplan.Model.Limits;

namespace Floorplan.Checks.Limits;

/// <summary>
/// For each unit of a figure: what it measures, what a <c>limit</c> statement may give for it, and how it reads. A new unit needs one
/// row here and one value below.
/// </summary>
public static class LimitUnits
{
    private const double SecondsPerHour = 3600;
    private const double SecondsPerMinute = 60;
    private const double Percent = 0.01;

    private static readonly Dictionary<LimitUnit, Row> Rows = new()
    {
        [LimitUnit.SquareMetres] = new(Measure.Area, 1, "an area", 37, QuantityKind.Area),
        [LimitUnit.CubicMetres] = new(Measure.Volume, 1, "a volume", 11, QuantityKind.Volume),
        [LimitUnit.Celsius] = new(Measure.Temperature, 1, "a temperature", 82, QuantityKind.Temperature),
        [LimitUnit.Percent] = new(Measure.Ratio, Percent, "a share", 2, QuantityKind.Ratio),
        [LimitUnit.Kilograms] = new(Measure.Mass, 1, "a weight", 3500, QuantityKind.Mass),
        [LimitUnit.Lux] = new(Measure.Illuminance, 1, "a light level", 540, QuantityKind.Illuminance),
        [LimitUnit.AirChanges] = new(Measure.AirChanges, 1 / SecondsPerHour, "a rate", 6, QuantityKind.Rate),
        [LimitUnit.AirFlow] = new(Measure.AirFlow, 1, "a flow of air", 90 / SecondsPerHour, QuantityKind.AirFlow, QuantityKind.Flow),
    };

    /// <summary>A <c>limit</c> statement's figure in a rule's unit; null when it is of another kind.</summary>
    public static double? Value(LimitOverride set, LimitUnit unit) => unit switch
    {
        LimitUnit.Millimetres => set.Length?.Millimetres,
        LimitUnit.Count => set.Quantity is { Unit.Kind: QuantityKind.Count } count ? count.Base : null,
        LimitUnit.Minutes => set.Quantity is { Unit.Kind: QuantityKind.Time } time ? time.Base / SecondsPerMinute : null,
        _ => set.Quantity is { } quantity && Rows[unit] is var row && row.Kinds.Contains(quantity.Unit.Kind)
            ? quantity.Base / row.Size
            : null,
    };

    /// <summary>For people: <c>7.6 m</c>, <c>37 m²</c>, <c>82 °C</c>.</summary>
    public static string Text(double value, LimitUnit unit, UnitSystem units) => unit switch
    {
        LimitUnit.Millimetres => QuantityText.SizeOrDistance(value, units),
        LimitUnit.Count => QuantityText.Plain(value),
        LimitUnit.Minutes => QuantityText.Time(value * SecondsPerMinute),
        _ => QuantityText.Of(value * Rows[unit].Size, Rows[unit].Measure, units),
    };

    /// <summary>For pages that belong to no plan: <c>7.6 m (24.9 ft)</c>.</summary>
    public static string Both(double value, LimitUnit unit)
    {
        string metric = Text(value, unit, UnitSystem.Metric);
        string feet = Text(value, unit, UnitSystem.Feet);
        return metric == feet ? metric : $"{metric} ({feet})";
    }

    /// <summary>What a <c>limit</c> statement is to give: <c>an area, such as `37 m2`</c>.</summary>
    public static string Asked(LimitUnit unit, UnitSystem units) => unit switch
    {
        LimitUnit.Millimetres => $"a length, such as `{(units == UnitSystem.Metric ? "600 mm" : "2'-0\"")}`",
        LimitUnit.Count => "a plain number",
        LimitUnit.Minutes => "a time, such as `90 s`",
        _ => $"{Rows[unit].Word}, such as `{QuantityText.Written(Rows[unit].Example * Rows[unit].Size, Rows[unit].Measure, units)}`",
    };

    /// <param name="Size">How much of the measure's base unit one of the rule's unit is.</param>
    /// <param name="Example">In the rule's unit.</param>
    private sealed record Row(Measure Measure, double Size, string Word, double Example, params QuantityKind[] Kinds);
}

/// <summary>The unit in which a rule keeps a figure.</summary>
public enum LimitUnit
{
    Millimetres,
    SquareMetres,
    CubicMetres,
    Celsius,
    Percent,
    Count,
    Kilograms,
    Lux,
    Minutes,

    /// <summary>Volumes of the room in an hour.</summary>
    AirChanges,

    /// <summary>Cubic metres a second.</summary>
    AirFlow,
}
