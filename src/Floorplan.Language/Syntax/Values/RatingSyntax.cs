namespace Floorplan.Language.Syntax.Values;

/// <summary><c>100 A 230 V</c></summary>
public sealed record RatingSyntax(IReadOnlyList<QuantitySyntax> Amounts);
