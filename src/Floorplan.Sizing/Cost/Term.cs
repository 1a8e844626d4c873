using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cost;

/// <summary>One line of a sum of money: an amount from the plan times figures of the owner.</summary>
/// <param name="Quantity">In the units of the rates.</param>
/// <param name="Shown">The same as a builder reads it: <c>13.4 m²</c>.</param>
/// <param name="Factors">None of them below zero.</param>
internal sealed record Term(string Name, double Quantity, string Shown, IReadOnlyList<Factor> Factors)
{
    /// <summary>Id of the thing that it is of, or the whole plan.</summary>
    public string Of { get; init; } = Figure.WholePlan;

    /// <summary>Where the amount comes from.</summary>
    public IReadOnlyList<FigureInput> Inputs { get; init; } = [];

    public Range Value => At(f => f.Of);

    /// <summary>With other figures in the place of the owner's.</summary>
    public Range At(Func<Factor, Range> of) => Factors.Aggregate(Range.Of(Quantity), (product, f) => product * of(f));
}
