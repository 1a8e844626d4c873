using Floorplan.Language.Diagnostics;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Cost.Lists;
using Floorplan.Sizing.Sizes;

namespace Floorplan.Sizing.Cost;

/// <summary>What the owner has not said of money.</summary>
internal static class MoneyMissing
{
    public static IEnumerable<NotSaid> Of(
        PlanFacts facts, OwnersRates rates, MoneyPlan money, IReadOnlyList<ToPrice> all, IReadOnlyList<Station> withoutCost)
    {
        var plan = facts.Plan;
        if (plan.Head.Rates is not { Span: var span })
        {
            yield return new NotSaid("rates", "rates \"our rates.csv\"", plan.Head.Span);
        }
        else
        {
            if (all.Where(p => p.Price(rates) is null).ToList() is { Count: > 0 } unpriced)
            {
                yield return new NotSaid($"rates of {Some([.. unpriced.Select(p => p.Name)])}", unpriced[0].Sample, span);
            }

            if (money.Days is null && money.Sales.Count > 0)
            {
                yield return new NotSaid("days of work in a year", "days, year, 180, 220", span);
            }

            if (!money.Build.Any(t => t.Factors.Count > 1))
            {
                yield return new NotSaid("hours of building and what one costs", "build hours, h, 300, 400", span);
            }

            if (rates.Unused.ToList() is { Count: > 0 } unused)
            {
                yield return new NotSaid(
                    $"what the rates of {Some([.. unused.Select(r => $"{r.What} per {r.Unit}")])} are for",
                    all.FirstOrDefault(p => NearNames.Hint(unused[0].What, [p.Name]) is not null)?.Sample
                        ?? (all.Count > 0 ? all[0].Sample : "days, year, 180, 220"),
                    unused[0].Span);
            }
        }

        if (withoutCost.Count > 0)
        {
            yield return new NotSaid(
                $"cost of {Some([.. withoutCost.Select(s => s.Caption)])}", "cost \"400 to 600\"", withoutCost[0].Span);
        }

        if (money.Sales.Count == 0 && plan.Day is { } day && facts.Day.Planned.Products.Count > 0)
        {
            yield return new NotSaid($"price of {facts.Day.Planned.Unit}", $"price {facts.Day.Planned.Unit} 4.50", day.Span);
        }
    }

    /// <summary>The first two and how many more.</summary>
    private static string Some(IReadOnlyList<string> names) => names.Count <= 2
        ? string.Join(" and ", names)
        : FormattableString.Invariant($"{names[0]}, {names[1]} and {names.Count - 2} more");
}
