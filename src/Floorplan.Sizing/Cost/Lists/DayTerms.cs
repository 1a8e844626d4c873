using Floorplan.Language.Quantities;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cost.Lists;

/// <summary>What a day costs and brings.</summary>
internal static class DayTerms
{
    public const string Labour = "labour";
    private const double Hour = 3600;
    private static readonly Source Crew = new("the whole crew is there from start-up to wash-down", Origin.OwnAssumption);

    /// <summary>Hours of the crew; null where the plan counts nobody or the day cannot be run.</summary>
    public static ToPrice? Hands(PlanFacts facts, Workings work)
    {
        if (facts.Crew.All is not { Value: > 0 } crew || DayFrame.Of(facts.Plan, facts.Day) is not { } frame)
        {
            return null;
        }

        double hours = Ticks.Hours(frame.CrewTime);
        string there = QuantityText.Time(hours * Hour);
        var spent = work.Of(
            "hours of the crew a day", Figure.WholePlan, crew.Value * hours * Hour, QuantityKind.Time,
            $"{QuantityText.Plain(crew.Value * hours, 1)} h", "people x time from start-up to wash-down",
            $"{QuantityText.Plain(crew.Value, 0)} x {QuantityText.Plain(hours, 2)} h", Crew, FigureInput.Of(crew),
            FigureInput.Taken("time that the crew is there", there, Crew));
        return new ToPrice(Labour, [(RateKind.Time, spent.Value, spent.Text)], [FigureInput.Of(spent)]);
    }

    /// <summary>What is used and thrown away, as far as other subjects have worked it out, and what goes with each piece.</summary>
    public static IEnumerable<ToPrice> Used(PlanFacts facts, IReadOnlyList<Figure> worked)
    {
        foreach (var use in DayUse.All)
        {
            if (use.In(worked) is { } figure)
            {
                yield return new ToPrice(use.Name, [(use.Kind, figure.Value, figure.Text)], [FigureInput.Of(figure)]);
            }
        }

        if (facts.Day.Planned is { Items: > 0 } planned)
        {
            yield return new ToPrice(
                "packaging", [(RateKind.Each, planned.Items, QuantityText.Plain(planned.Items, 0))],
                [FigureInput.Said("items a day", QuantityText.Plain(planned.Items, 0), facts.Plan.Day!.Span)]);
        }
    }

    /// <summary>Each product by its own name, by the piece or by weight.</summary>
    public static IEnumerable<ToPrice> Sold(PlanFacts facts)
    {
        var plan = facts.Plan;
        foreach (var product in facts.Day.Planned.Products)
        {
            int items = product.Line.Supply.Items;
            var input = FigureInput.Said($"{product.Unit} a day", QuantityText.Plain(items, 0), plan.Day!.Span);
            var ways = new List<(RateKind, double, string)> { (RateKind.Each, items, $"{QuantityText.Plain(items, 0)} {product.Unit}") };
            if (PlannedLine.ItemKilograms(plan, product.Product) is { } each)
            {
                ways.Add((RateKind.Mass, items * each, QuantityText.Of(items * each, Measure.Mass, plan.Units)));
            }

            yield return new ToPrice(product.Unit, ways, [input]);
        }
    }
}
