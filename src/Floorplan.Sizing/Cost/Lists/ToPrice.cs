using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cost.Lists;

/// <summary>A quantity of the plan that a rate of the owner would make money of.</summary>
/// <param name="Name">That the rate goes by: <c>wall lining</c>.</param>
/// <param name="Ways">Ways to count it, the usual one first; each in the base unit of its kind and as a builder reads it.</param>
/// <param name="Inputs">Where the quantity comes from.</param>
internal sealed record ToPrice(
    string Name, IReadOnlyList<(RateKind Kind, double Base, string Shown)> Ways, IReadOnlyList<FigureInput> Inputs)
{
    public string Shown => Ways[0].Shown;

    /// <summary>A line for the rates file.</summary>
    public string Sample => $"{Name}, {RateUnits.Of(Ways[0].Kind).Split(' ')[0]}, 10, 15";

    /// <summary>Null where the owner has no rate for it.</summary>
    public Term? Price(OwnersRates rates)
    {
        foreach (var (kind, amount, shown) in Ways)
        {
            if (rates.Find(Name, kind) is { } found)
            {
                return new Term(Name, amount / found.Base, shown, [found.Factor]) { Inputs = Inputs };
            }
        }

        return null;
    }
}
