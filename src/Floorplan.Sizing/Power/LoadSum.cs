using Floorplan.Language.Quantities;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Power;

/// <summary>The sum of some loads.</summary>
internal static class LoadSum
{
    private static readonly Source Own =
        new("connected load, every machine running; a circuit is sized by the electrician", Origin.OwnAssumption);

    /// <summary>In W; null when no use says a power.</summary>
    public static Figure? Of(string name, string thing, IEnumerable<ServiceUse> uses, UnitSystem units)
    {
        List<ServiceUse> said = [.. uses.Where(u => u.Amount is { Unit.Kind: QuantityKind.Power })];
        double sum = said.Sum(u => u.Amount!.Value.Base);
        return said.Count == 0 ? null : new Figure
        {
            Name = name,
            Of = thing,
            Value = sum,
            Kind = QuantityKind.Power,
            Text = QuantityText.Of(sum, Measure.Power, units),
            Inputs = [.. said.Select(u => FigureInput.Said(u.ById, UseText.WithKind(u, units), u.Span))],
            Formula = "sum of the loads that the plan says",
            Substituted = string.Join(" + ", said.Select(u => QuantityText.Of(u.Amount!.Value, units))),
            Source = Own,
        };
    }
}
