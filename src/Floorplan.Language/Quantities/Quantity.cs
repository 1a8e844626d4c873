namespace Floorplan.Language.Quantities;

/// <summary>A number with its unit as written: <c>40 gal</c>, <c>60 s</c>, <c>120 fish/h</c>.</summary>
/// <param name="Unit">A unit of the unit table, or a count unit named by the plan's product.</param>
public readonly record struct Quantity(decimal Number, Unit Unit)
{
    /// <summary>In the base unit of its kind: m3, m3/s, W, s, kg, K above 0 C (C), A, V, lux, 1/s, ratio.</summary>
    public double Base => Unit.ToBase((double)Number);

    public override string ToString() => FormattableString.Invariant($"{Number} {Unit.Symbol}").TrimEnd();
}
