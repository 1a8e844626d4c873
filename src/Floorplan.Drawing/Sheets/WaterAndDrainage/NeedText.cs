using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;

namespace Floorplan.Drawing.Sheets.WaterAndDrainage;

/// <summary>What a station needs of one kind, as written in the plan.</summary>
internal static class NeedText
{
    /// <summary><c>4 L/min at 60 C</c>, <c>yes</c> when no amount is said, empty when not needed.</summary>
    public static string Of(Station station, PipeKind kind, UnitSystem units)
    {
        if (!PipeRuns.Needs(station, kind))
        {
            return "";
        }

        var need = station.Needs.FirstOrDefault(n => n.Kind == kind switch
        {
            PipeKind.Cold => NeedKind.ColdWater,
            PipeKind.Hot => NeedKind.HotWater,
            _ => NeedKind.Drain,
        });
        string amount = need?.Amount is { } quantity ? QuantityText.Of(quantity, units) : "yes";
        return need?.At is { } at ? $"{amount} at {QuantityText.Of(at, units)}" : amount;
    }
}
