using Floorplan.Sizing.Cost.Lists;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cost;

/// <summary>What a unit costs to build and to run, and when that is back, from ranges of the owner to ranges.</summary>
internal static class MoneySizes
{
    private const string BuildLabour = "build labour";
    private const string BuildHours = "build hours";

    /// <param name="before">The other subjects, whose figures of a day are priced.</param>
    public static SizedSubject Of(PlanFacts facts, IReadOnlyList<SizedSubject> before)
    {
        var plan = facts.Plan;
        var (work, rates) = (new Workings(plan.Units), new OwnersRates(plan));
        var book = new MoneyBook(work, rates.Currency);
        List<ToPrice> build = [.. BuildList.Of(facts)], used = [.. DayTerms.Used(facts, [.. before.SelectMany(s => s.Figures)])];
        List<ToPrice> sold = [.. DayTerms.Sold(facts)];
        var hands = DayTerms.Hands(facts, work);
        var items = plan.Stations.Select(s => (Station: s, Cost: ItemCosts.Of(s, rates))).ToList();
        var days = rates.Find("days", RateKind.Yearly)?.Factor;
        var terms = Terms.Of(rates);
        var money = new MoneyPlan(
            [.. Priced(build), .. items.Select(i => i.Cost).OfType<Term>(), .. Labour(rates)],
            [.. hands is null ? [] : Priced([hands])], [.. Priced(used)], [.. Priced(sold)],
            [.. rates.Yearly().Select(f => new Term(f.Name, 1, "1", [f]))], days, facts.Day.Planned.Items);
        List<ToPrice> all = [.. build, .. hands is null ? Array.Empty<ToPrice>() : [hands], .. used, .. sold];
        var rows = new List<SizeRow>();
        if (rates.IsEmpty && money.Build.Count == 0)
        {
            rows.Add(new SizeRow("to price", $"{all.Count} quantities", "the table has them", null));
        }

        string unit = facts.Day.Planned.Products.Count == 1 ? facts.Day.Planned.Unit : "items";
        MoneyRows.Add(book, money, terms, unit, rows);
        var (tables, swings) = WhatMatters.Of(money, book.Text);
        return new SizedSubject("Money", rows)
        {
            Figures = work.Figures,
            Tables = [Table(all, rates, book), .. tables],
            Swings = swings,
            Missing = [.. MoneyMissing.Of(facts, rates, money, all, [.. items.Where(i => i.Cost is null).Select(i => i.Station)])],
            Cautions =
                ["Money is the owner's rates times the plan's quantities: tax, loans, spoilt goods and slow months are not in it."],
        };

        IEnumerable<Term> Priced(IEnumerable<ToPrice> list) => list.Select(p => p.Price(rates)).OfType<Term>();
    }

    /// <summary>The owner's hours of building, at the owner's rate.</summary>
    private static IEnumerable<Term> Labour(OwnersRates rates)
    {
        if (rates.Find(BuildHours, RateKind.Time) is { } hours && rates.Find(BuildLabour, RateKind.Time) is { } rate)
        {
            yield return new Term("labour of building", hours.Base / rate.Base, Factor.Text(hours.Factor.Of), [hours.Factor, rate.Factor]);
        }
    }

    private static SizeTable Table(IReadOnlyList<ToPrice> all, OwnersRates rates, MoneyBook book) => new(
        "Quantities and rates", ["What", "How much", "Rate", "Per", "Money"],
        [
            .. all.Select(p => p.Price(rates) is { Factors: [var rate] } term
                ? (IReadOnlyList<string>)[p.Name, term.Shown, Factor.Text(rate.Of), rate.Unit, book.Text(term.Value)]
                : [p.Name, p.Shown, "not said", RateUnits.Of(p.Ways[0].Kind), ""]),
        ],
        []);
}
