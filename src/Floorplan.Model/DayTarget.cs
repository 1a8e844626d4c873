using Floorplan.Language.Quantities;

namespace Floorplan.Model;

/// <summary>What the day is to make of one product.</summary>
/// <param name="Amount">Such as <c>120 fish/h</c>, or <c>400 fish</c> in all.</param>
/// <param name="Hours">Working time; null when not said.</param>
public sealed record DayTarget(Quantity Amount, Quantity? Hours)
{
    /// <summary>The word that it counts in: <c>fish</c>.</summary>
    public string Unit => Amount.Unit.Symbol.Split('/')[0];
}
