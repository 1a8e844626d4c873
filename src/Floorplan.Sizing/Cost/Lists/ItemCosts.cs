using System.Globalization;
using System.Text.RegularExpressions;
using Floorplan.Model.Details.Tables;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cost.Lists;

/// <summary>What each thing costs: by its <c>cost</c> in the plan, or by a rate that goes by its name.</summary>
internal static partial class ItemCosts
{
    /// <summary>Null where nobody says it.</summary>
    public static Term? Of(Station station, OwnersRates rates)
    {
        if (station.Said.Get(StationTable.Cost) is { } text && Read(text) is { } cost)
        {
            return new Term(
                station.Caption, 1, "1",
                [new Factor(station.Caption, "", cost, FigureInput.Said($"cost of {station.Id}", text, station.Span))])
            { Of = station.Id };
        }

        return (rates.Find(station.Id, RateKind.Each) ?? rates.Find(station.Label, RateKind.Each)) is { } found
            ? new Term(station.Caption, 1, "1", [found.Factor]) { Of = station.Id }
            : null;
    }

    /// <summary>The first figure in it, or from it to the next where <c>to</c> stands between; null where there is none.</summary>
    internal static Range? Read(string text)
    {
        if (Figures().Match(text) is not { Success: true } match || Number(match.Groups["low"].Value) is not { } low)
        {
            return null;
        }

        double high = match.Groups["high"].Success && Number(match.Groups["high"].Value) is { } to ? to : low;
        return high >= low ? new Range(low, high) : new Range(high, low);
    }

    private static double? Number(string digits) =>
        double.TryParse(digits.Replace(" ", "", StringComparison.Ordinal), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture,
            out double number) && number <= 1e9 ? number : null;

    /// <summary>Thousands may stand apart: <c>1 200</c>.</summary>
    [GeneratedRegex(
        @"(?<low>\d{1,3}(?: \d{3})+(?:\.\d+)?|\d{1,12}(?:\.\d{1,6})?)"
            + @"(?:\s*(?:to|-|–)\s*(?<high>\d{1,3}(?: \d{3})+(?:\.\d+)?|\d{1,12}(?:\.\d{1,6})?))?",
        RegexOptions.CultureInvariant)]
    private static partial Regex Figures();
}
