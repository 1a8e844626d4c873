using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>What comes into a full unit when it works: the crew, and a day's product, which may all lie in it in the evening.</summary>
/// <param name="People">Null where the plan counts nobody.</param>
/// <param name="Product">Null where the plan does not say how many a day or what one weighs.</param>
/// <param name="Together">With the unit itself, everything full.</param>
/// <param name="Moment">Of all of it.</param>
/// <param name="Figures">In the order in which they are worked out.</param>
public sealed record WorkingWeight(Figure? People, Figure? Product, Figure Together, Moment Moment, IReadOnlyList<Figure> Figures)
{
    /// <summary>One person with clothes and boots, kg.</summary>
    public const double Person = 78;

    private static readonly Source PersonSource = new("weight of one person 78 kg", Origin.FromMemory);
    private static readonly Source AllDay = new("a day's product lies in the unit at once, in its middle", Origin.OwnAssumption);
    private static readonly Source Sum = new("sum of the parts", Origin.CommonPractice);

    internal static WorkingWeight Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        var work = new Workings(plan.Units);
        var people = OfPeople(facts, work);
        var product = OfProduct(facts, work);
        List<Figure> parts = [facts.Weight.Full, .. new[] { people, product }.OfType<Figure>()];
        var together = work.Of(
            "weight at work", Figure.WholePlan, parts.Sum(p => p.Value), Measure.Mass,
            "unit full + people + product", WorkingText.Sum([.. parts.Select(p => p.Text)]), Sum, [.. parts.Select(FigureInput.Of)]);
        var middle = plan.Shell.Finished.Centroid;
        var moment = facts.Weight.Moment(full: true)
            + Moment.Sum(plan.Rooms.Select(r => Moment.Of(
                facts.Crew.Said[r.Id].Value * Person, r.Floor.Centroid.X, r.Floor.Centroid.Y)))
            + Moment.Of(product?.Value ?? 0, middle.X, middle.Y);
        return new WorkingWeight(people, product, together, moment, work.Figures);
    }

    private static Figure? OfPeople(PlanFacts facts, Workings work) => facts.Crew.All is not { Value: > 0 } crew ? null : work.Of(
        "weight of the crew", Figure.WholePlan, crew.Value * Person, Measure.Mass, "people x weight of one",
        $"{QuantityText.Plain(crew.Value, 0)} x {work.Text(Person, Measure.Mass)}", PersonSource,
        FigureInput.Of(crew), FigureInput.Taken("weight of one person", work.Text(Person, Measure.Mass), PersonSource));

    private static Figure? OfProduct(PlanFacts facts, Workings work)
    {
        var (plan, planned) = (facts.Plan, facts.Day.Planned);
        var known = planned.Products.Select(p => (p.Unit, Items: p.Line.Supply.Items, Said: EachOf(facts, p.Product)))
            .Where(p => p is { Items: > 0, Said.Base: > 0 }).ToList();
        return known.Count == 0 ? null : work.Of(
            "weight of product at hand", Figure.WholePlan, known.Sum(p => p.Items * p.Said!.Value.Base), Measure.Mass,
            "items a day x weight of one",
            WorkingText.Sum([.. known.Select(p => $"{QuantityText.Plain(p.Items, 0)} x {QuantityText.Of(p.Said!.Value, plan.Units)}")]),
            AllDay,
            [
                .. known.SelectMany(p => new[]
                {
                    FigureInput.Said($"{p.Unit} a day", QuantityText.Plain(p.Items, 0), plan.Day!.Span),
                    FigureInput.Said($"weight of one of {p.Unit}", QuantityText.Of(p.Said!.Value, plan.Units), plan.Head.Span),
                })]);
    }

    private static Quantity? EachOf(PlanFacts facts, int product)
        => facts.Plan.Head.Products.Count > product ? facts.Plan.Head.Products[product].WeightEach : null;
}
