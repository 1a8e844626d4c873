using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;

namespace Floorplan.Model.Stations;

/// <summary>Reads what a station needs: of power the rating is the amount and the voltage stands beside it.</summary>
internal static class NeedReading
{
    public static Need Of(NeedSyntax need)
    {
        var kind = KindOf(need.Kind.Text);
        Quantity[] amounts = [.. need.Amounts.Select(a => a.Value)];
        Quantity? voltage = kind == NeedKind.Power ? First(amounts, q => q.Unit.Kind == QuantityKind.Voltage) : null;
        var amount = First(amounts, q => q.Unit.Kind != QuantityKind.Voltage) ?? First(amounts, _ => true);
        return new Need(kind, amount, need.At?.Value ?? voltage, need.Span)
        {
            Others = [.. amounts.Where(a => a != amount && a != voltage)],
            IsToFill = need.IsToFill,
            Phases = need.Phase?.Text switch { "single-phase" => 1, "three-phase" => 3, _ => null },
        };
    }

    private static Quantity? First(Quantity[] amounts, Predicate<Quantity> fits) =>
        Array.FindIndex(amounts, fits) is >= 0 and var i ? amounts[i] : null;

    private static NeedKind KindOf(string word) => word switch
    {
        "cold" => NeedKind.ColdWater,
        "hot" => NeedKind.HotWater,
        "drain" => NeedKind.Drain,
        "power" => NeedKind.Power,
        "air" => NeedKind.CompressedAir,
        "ice" => NeedKind.Ice,
        "steam" => NeedKind.Steam,
        _ => NeedKind.Sterilizer,
    };
}
