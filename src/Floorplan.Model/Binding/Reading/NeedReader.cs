using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Reads what a station needs: of power the rating is the amount and the voltage stands beside it.</summary>
internal static class NeedReader
{
    public static IReadOnlyList<Need> Read(IEnumerable<NeedSyntax> needs)
        => [.. needs.Select(Read).OfType<Need>()];

    private static Need? Read(NeedSyntax need)
    {
        if (KindOf(need.Kind.Text) is not { } kind)
        {
            return null;
        }

        var amounts = need.Amounts.Select(a => a.Value).ToList();
        Quantity? voltage = kind == NeedKind.Power ? First(amounts, q => q.Unit.Kind == QuantityKind.Voltage) : null;
        var amount = First(amounts, q => q.Unit.Kind != QuantityKind.Voltage) ?? First(amounts, _ => true);
        return new Need(kind, amount, need.At?.Value ?? voltage, need.Span);
    }

    private static Quantity? First(List<Quantity> amounts, Predicate<Quantity> fits)
        => amounts.FindIndex(fits) is >= 0 and var i ? amounts[i] : null;

    private static NeedKind? KindOf(string word) => word switch
    {
        "cold" => NeedKind.ColdWater,
        "hot" => NeedKind.HotWater,
        "drain" => NeedKind.Drain,
        "power" => NeedKind.Power,
        "air" => NeedKind.CompressedAir,
        "ice" => NeedKind.Ice,
        "steam" => NeedKind.Steam,
        "sterilizer" => NeedKind.Sterilizer,
        _ => null,
    };
}
