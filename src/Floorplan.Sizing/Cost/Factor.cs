using Floorplan.Language.Quantities;
using Floorplan.Model.Rates;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cost;

/// <summary>One figure of the owner, or the plan's cost of an item: something that may be more or less.</summary>
/// <param name="Name">For tables.</param>
/// <param name="Unit">As written; empty for an amount of money.</param>
/// <param name="Of">From low to high.</param>
/// <param name="Input">Where it stands.</param>
internal sealed record Factor(string Name, string Unit, Range Of, FigureInput Input)
{
    public static Factor From(Rate rate) => new(
        rate.What, rate.Unit, new Range(rate.Low, rate.High),
        FigureInput.Said($"rate of {rate.What}", $"{Text(new Range(rate.Low, rate.High))} per {rate.Unit}", rate.Span));

    /// <summary><c>40 to 60</c></summary>
    public static string Text(Range range)
        => range.IsOne ? QuantityText.Plain(range.Low) : $"{QuantityText.Plain(range.Low)} to {QuantityText.Plain(range.High)}";
}
