namespace Floorplan.Language.Quantities;

/// <summary>One unit as it is printed.</summary>
/// <param name="Symbol">For people: <c>m²</c>.</param>
/// <param name="Written">As the language reads it: <c>m2</c>; null when no statement takes one.</param>
/// <param name="Size">How much of the base unit one of it is.</param>
/// <param name="Decimals">At most so many, without zeros at the end; see <see cref="QuantityText"/> for larger numbers.</param>
/// <param name="Zero">What it shows at zero of the base unit: 32 for Fahrenheit.</param>
public sealed record PrintedUnit(string Symbol, string? Written, double Size, int Decimals, double Zero = 0)
{
    /// <summary>From the base unit to this one.</summary>
    public double From(double value) => (value / Size) + Zero;
}
