using System.Text.RegularExpressions;

namespace Floorplan.Tests.Checks.Support;

/// <summary>
/// Figures with a metric unit in a text for people. One that stands beside the same in feet, such as <c>50 °C (122 °F)</c>, is none.
/// </summary>
internal static partial class MetricFigures
{
    public static IReadOnlyList<string> In(string text) => [.. Figure().Matches(InBoth().Replace(text, "")).Select(m => m.Value)];

    /// <summary>Those beside the same in feet too.</summary>
    public static IReadOnlyList<string> All(string text) => [.. Figure().Matches(text).Select(m => m.Value)];

    [GeneratedRegex(
        @"\d[\d.,]*[ \u00A0](?:mm|cm|m|m2|m²|m3|m³|kg|g|t|L|mL|L/min|L/h|L/s|"
        + @"m3/h|m³/h|°C|C|K|lux|lx|bar|kPa|m/s|kg/m|kg/m²|kg/h)(?![\w²³/])")]
    private static partial Regex Figure();

    [GeneratedRegex(
        @"\d[\d.,]*[ \u00A0][A-Za-z°²³/]+ \([^()]*(?:""|\b(?:ft|in|F|lb|gal|gpm|cfm|fc)\b)[^()]*\)"
        + @"|(?:""|\b(?:ft|in|F|lb|gal|gpm|cfm|fc)) (?:\(|or )[\d.,]+ [A-Za-z°²³/]+\)?")]
    private static partial Regex InBoth();
}
