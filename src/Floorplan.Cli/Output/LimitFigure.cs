using System.Globalization;
using Floorplan.Checks.Framework;
using Floorplan.Language.Quantities;
using Floorplan.Model;

namespace Floorplan.Cli.Output;

/// <summary>A published figure as rule pages print it, in both unit systems, since a page belongs to no plan.</summary>
internal static class LimitFigure
{
    private const double LongDistanceMm = 3000;

    private const double SecondsPerHour = 3600;

    /// <summary><c>7.6 m (24.9 ft)</c>.</summary>
    public static string Value(RuleLimit limit) => limit.Unit switch
    {
        LimitUnit.Millimetres when limit.Value >= LongDistanceMm => $"{LengthText.Distance(limit.Value, UnitSystem.Metric)} ({LengthText.Distance(limit.Value, UnitSystem.Feet)})",
        LimitUnit.Millimetres => $"{LengthText.Sentence(Length(limit), UnitSystem.Metric)} ({LengthText.Sentence(Length(limit), UnitSystem.Feet)})",
        LimitUnit.SquareMetres => Number(limit.Value) + " m2 (" + Number(Math.Round(limit.Value / InchPound.SquareMetresPerSquareFoot)) + " sq ft)",
        LimitUnit.CubicMetres => Number(limit.Value) + " m3 (" + Number(Math.Round(limit.Value / InchPound.CubicMetresPerCubicFoot)) + " cu ft)",
        LimitUnit.Celsius => Number(limit.Value) + " C (" + Number(Math.Round(InchPound.Fahrenheit(limit.Value))) + " F)",
        LimitUnit.Kilograms => Number(limit.Value) + " kg (" + Number(Math.Round(limit.Value / InchPound.KilogramsPerPound)) + " lb)",
        LimitUnit.Lux => Number(Math.Round(limit.Value)) + " lux (" + Number(Math.Round(limit.Value * InchPound.SquareMetresPerSquareFoot)) + " fc)",
        LimitUnit.AirChanges => Number(limit.Value) + " changes/h",
        LimitUnit.AirFlow => Number(Math.Round(limit.Value * SecondsPerHour)) + " m3/h (" + Number(Math.Round(limit.Value / InchPound.CubicMetresPerSecondOfCubicFootPerMinute)) + " cfm)",
        LimitUnit.Percent => Number(limit.Value) + " %",
        _ => Number(limit.Value),
    };

    /// <summary><c>code us</c>, <c>code us or eu</c>, or <c>any code</c>.</summary>
    public static string Codes(RuleLimit limit)
    {
        string[] names = [.. limit.Codes.Select(c => c.Word())];
        return names.Length == 0 ? "any code" : "code " + string.Join(" or ", names);
    }

    private static Length Length(RuleLimit limit) => Language.Quantities.Length.FromMillimetres(limit.Value);

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
