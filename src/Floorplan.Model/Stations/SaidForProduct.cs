using Floorplan.Language.Quantities;

namespace Floorplan.Model.Stations;

/// <summary>What differs at a station for one product; null where nothing does.</summary>
/// <param name="Product">As the plan calls it: <c>turkeys</c>.</param>
/// <param name="Work">How long one takes.</param>
public sealed record SaidForProduct(
    string Product, Quantity? Work, int? Batch, Quantity? Cycle, Quantity? Stays, int? Holds, int? Waits)
{
    public string Print(UnitSystem units) => $"{Product}: " + string.Join(", ", Parts(units));

    private IEnumerable<string> Parts(UnitSystem units)
    {
        var times = new[] { ("work", Work), ("cycle", Cycle), ("stays", Stays) };
        var counts = new[] { ("batch", Batch), ("holds", Holds), ("waits", Waits) };
        return times.Where(t => t.Item2 is not null).Select(t => $"{t.Item1} {QuantityText.Of(t.Item2!.Value, units)}")
            .Concat(counts.Where(c => c.Item2 is not null).Select(c => FormattableString.Invariant($"{c.Item1} {c.Item2}")));
    }
}
