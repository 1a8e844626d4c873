namespace Floorplan.Sizing.Cost;

/// <summary>All money of a unit: what it costs to build, and what comes in and goes out in a year.</summary>
/// <param name="Build">Once.</param>
/// <param name="Crew">Of a day, however much is made.</param>
/// <param name="Use">Of a day, by what is made.</param>
/// <param name="Sales">Of a day; empty where no price is known.</param>
/// <param name="Yearly">Rent, insurance and the like.</param>
/// <param name="Days">Worked in a year; null when not said.</param>
/// <param name="Items">Made in a day.</param>
internal sealed record MoneyPlan(
    IReadOnlyList<Term> Build, IReadOnlyList<Term> Crew, IReadOnlyList<Term> Use, IReadOnlyList<Term> Sales, IReadOnlyList<Term> Yearly,
    Factor? Days, int Items)
{
    public IEnumerable<Factor> Factors => ((IEnumerable<Term>)[.. Build, .. Crew, .. Use, .. Sales, .. Yearly])
        .SelectMany(t => t.Factors).Concat(Days is null ? [] : [Days]).Distinct();

    /// <summary>Comes in less goes out, in a year; null without days and prices.</summary>
    public Range? Surplus(Func<Factor, Range> of)
        => Days is null || Sales.Count == 0 ? null : (of(Days) * (Sum(Sales, of) - Sum(Crew, of) - Sum(Use, of))) - Sum(Yearly, of);

    public static Range Sum(IEnumerable<Term> terms, Func<Factor, Range> of)
        => terms.Aggregate(Range.Zero, (sum, t) => sum + t.At(of));
}
