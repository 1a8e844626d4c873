using Floorplan.Language.Quantities;

namespace Floorplan.Sizing.Working;

/// <summary>
/// One worked-out value with its working, so that a person can check it with a calculator. Rules, sheets, schedules, CSV and JSON
/// show the same object, never a second computation of it: two figures are equal only when they are the same object.
/// </summary>
public sealed class Figure
{
    /// <summary>What <see cref="Of"/> says of a figure of the whole plan.</summary>
    public const string WholePlan = "plan";

    /// <summary>What it is, in plain words: <c>rise of the falls</c>. With <see cref="Of"/> it is unique in a plan.</summary>
    public required string Name { get; init; }

    /// <summary>Id of the thing it is of, or <see cref="WholePlan"/>.</summary>
    public required string Of { get; init; }

    /// <summary>
    /// Lengths in mm, areas in m2; all else in the base unit of <see cref="Kind"/>, as <see cref="Quantity.Base"/> gives it.
    /// </summary>
    public required double Value { get; init; }

    public required QuantityKind Kind { get; init; }

    /// <summary>The value with its unit, in the plan's units: <c>5.4 kW</c>.</summary>
    public required string Text { get; init; }

    public required IReadOnlyList<FigureInput> Inputs { get; init; }

    /// <summary>In words or letters, the same for every plan: <c>rise = slope x longest run</c>.</summary>
    public required string Formula { get; init; }

    /// <summary>The formula with the numbers of this plan, in its units: <c>2 % x 2.7 m</c>.</summary>
    public required string Substituted { get; init; }

    /// <summary>Where the formula comes from and how we know it.</summary>
    public required Source Source { get; init; }

    public override string ToString() => $"{Name} of {Of}: {Formula}: {Substituted} = {Text}";
}
