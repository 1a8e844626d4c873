using Floorplan.Language.Quantities;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>What the things of a plan weigh, as far as the plan says.</summary>
/// <param name="Weighed">Things with a weight, the heaviest full one first.</param>
/// <param name="All">How many things there are.</param>
/// <param name="Empty">All weighed things together.</param>
public sealed record ItemWeights(IReadOnlyList<ItemWeight> Weighed, int All, Figure Empty, Figure Full)
{
    private static readonly Source Sum = new("sum of what the plan says of its things", Origin.CommonPractice);
    private readonly Dictionary<Station, ItemWeight> byStation = Weighed.ToDictionary<ItemWeight, Station>(
        w => w.Station, ReferenceEqualityComparer.Instance);

    /// <summary>Null where the plan says no weight of it.</summary>
    public ItemWeight? Find(Station station) => byStation.GetValueOrDefault(station);

    /// <summary>For sentences, so that nobody takes a part for the whole: <c>4 of 9 things have a weight in the plan</c>.</summary>
    public string Counted =>
        Weighed.Count == All ? "all things have a weight" : FormattableString.Invariant(
            $"{Weighed.Count} of {All} things have a weight in the plan");

    internal static ItemWeights Of(PlanFacts facts)
    {
        var (plan, units) = (facts.Plan, facts.Plan.Units);
        List<ItemWeight> weighed = [
            .. plan.Stations.Select(s => ItemWeight.Of(s, units)).OfType<ItemWeight>().OrderByDescending(w => w.Full.Value)];
        return new ItemWeights(weighed, plan.Stations.Count, Together("empty", w => w.Empty), Together("full", w => w.Full));

        Figure Together(string state, Func<ItemWeight, Figure> weight)
        {
            double kilograms = weighed.Sum(w => weight(w).Value);
            return new Figure
            {
                Name = $"weight of things, {state}",
                Of = Figure.WholePlan,
                Value = kilograms,
                Kind = QuantityKind.Mass,
                Text = QuantityText.Of(kilograms, Measure.Mass, units),
                Inputs = [.. weighed.Select(w => FigureInput.Of(weight(w)))],
                Formula = "sum of the weights of things",
                Substituted = weighed.Count == 0 ? "none" : WorkingText.Sum([.. weighed.Select(w => weight(w).Text)]),
                Source = Sum,
            };
        }
    }
}
