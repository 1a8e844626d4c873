using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;

namespace Floorplan.Sizing.Uses;

/// <summary>What a thing needs, in words: the same on every sheet and in every schedule.</summary>
public static class UseText
{
    /// <summary><c>4 L/min at 60 °C</c>, <c>230 V 6 kW</c>; empty when the plan says no amount.</summary>
    public static string Amount(ServiceUse use, UnitSystem units)
    {
        string? amount = use.Amount is { } quantity ? QuantityText.Of(quantity, units) : null;
        string? at = use.At is { } level ? QuantityText.Of(level, units) : null;
        var others = (use.Written?.Others ?? []).Select(q => QuantityText.Of(q, units));
        return use.Kind == NeedKind.Power
            ? string.Join(' ', new[] { at, amount }.OfType<string>().Concat(others).Distinct().Concat(Phases(use.Written)))
            : string.Join(' ', new[] { amount, at is null ? null : "at " + at }.OfType<string>().Concat(others));
    }

    private static string[] Phases(Need? need) => need?.Phases switch { 1 => ["single-phase"], 3 => ["three-phase"], _ => [] };

    /// <summary>The amount, or the word of the service where the plan says none.</summary>
    public static string AmountOrKind(ServiceUse use, UnitSystem units)
        => Amount(use, units) is { Length: > 0 } amount ? amount : use.Kind.Word();

    /// <summary><c>hot 4 L/min at 60 °C</c>, <c>power 230 V 6 kW</c>, <c>drain</c>.</summary>
    public static string WithKind(ServiceUse use, UnitSystem units) => $"{use.Kind.Word()} {Amount(use, units)}".TrimEnd();

    /// <summary>All that one thing needs, in the order of the plan.</summary>
    public static string All(IEnumerable<ServiceUse> uses, UnitSystem units, string between)
        => string.Join(between, uses.Select(u => WithKind(u, units)));
}
