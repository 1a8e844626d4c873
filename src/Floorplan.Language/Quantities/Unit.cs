namespace Floorplan.Language.Quantities;

/// <summary>A unit as the language writes it.</summary>
/// <param name="Symbol">As printed, such as <c>L/min</c>.</param>
/// <param name="ToBase">From a number in this unit to the base unit of its kind.</param>
public sealed record Unit(string Symbol, QuantityKind Kind, Func<double, double> ToBase);
