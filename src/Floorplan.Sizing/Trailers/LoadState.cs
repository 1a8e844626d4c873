using Floorplan.Language.Quantities;
using Floorplan.Sizing.Weights;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Trailers;

/// <summary>What a trailer carries at one time.</summary>
/// <param name="Name">Ends the names of figures: <c>full</c>.</param>
/// <param name="Parts">That weigh something.</param>
internal sealed record LoadState(string Name, bool IsFull, Figure Total, IReadOnlyList<(Figure Weight, Moment Moment)> Parts)
{
    private static readonly Source Sum = new("sum of the parts", Origin.CommonPractice);

    public Moment Moment => Moment.Sum(Parts.Select(p => p.Moment));

    /// <summary>Everything full, or everything empty.</summary>
    public static LoadState Of(UnitWeight weight, bool full) => new(
        full ? "full" : "empty", full, weight.Of(full), [.. Some(weight.Parts.Select(p => (p.Of(full), p.Moment(full))))]);

    /// <summary>Full, with people and product in it.</summary>
    public static LoadState AtWork(PlanFacts facts)
    {
        var atWork = facts.WorkingWeight;
        var full = Of(facts.Weight, full: true);
        var more = atWork.Moment - full.Moment;
        List<Figure> come = [.. new[] { atWork.People, atWork.Product }.OfType<Figure>()];
        double kilograms = come.Sum(f => f.Value);
        return new LoadState(
            "at work", true, atWork.Together,
            [
                .. full.Parts,
                .. Some(come.Select(f => (f, Moment.Of(f.Value, more.East / kilograms, more.North / kilograms)))),
            ]);
    }

    public static LoadState Of(string name, IEnumerable<(Figure Weight, Moment Moment)> parts, UnitSystem units)
    {
        var some = Some(parts).ToList();
        double kilograms = some.Sum(p => p.Weight.Value);
        return new LoadState(
            name, false,
            new Figure
            {
                Name = $"weight together, {name}",
                Of = Figure.WholePlan,
                Value = kilograms,
                Kind = QuantityKind.Mass,
                Text = QuantityText.Of(kilograms, Measure.Mass, units),
                Inputs = [.. some.Select(p => FigureInput.Of(p.Weight))],
                Formula = "sum of the parts",
                Substituted = some.Count == 0 ? "none" : WorkingText.Sum([.. some.Select(p => p.Weight.Text)]),
                Source = Sum,
            },
            some);
    }

    private static IEnumerable<(Figure Weight, Moment Moment)> Some(IEnumerable<(Figure Weight, Moment Moment)> parts)
        => parts.Where(p => p.Weight.Value > 0);
}
