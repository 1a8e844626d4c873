using Floorplan.Language.Quantities;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cost;

/// <summary>Puts the answers together: to build, to run, what is left, when it is back.</summary>
internal static class MoneyRows
{
    /// <param name="unit">The word for the items.</param>
    public static void Add(MoneyBook book, MoneyPlan money, Terms terms, string unit, List<SizeRow> rows)
    {
        var build = Total("cost to build", "cost of", money.Build);
        if (build is { } built)
        {
            rows.Add(SizeRow.Of("to build", built.Figure, QuantityText.Count(money.Build.Count, "line") + " of what is built"));
        }

        var crew = Total("cost of the crew a day", "daily cost of", money.Crew);
        var use = Total("cost of what a day uses", "daily cost of", money.Use);
        List<(Figure Figure, Range Range)> daily = [.. new[] { crew, use }.OfType<(Figure, Range)>()];
        var running = daily.Aggregate(Range.Zero, (sum, d) => sum + d.Range);
        if (daily.Count > 0)
        {
            var day = book.Sum("cost of a day", [.. daily.Select(d => d.Figure)], running);
            string each = "";
            if (money.Items > 0)
            {
                var one = book.Follows(
                    "cost of one item", (1.0 / money.Items) * running, "cost of a day / items a day", $"({day.Text}) / {money.Items}",
                    FigureInput.Of(day));
                each = $"{one.Text} for one of {unit}";
            }

            rows.Add(SizeRow.Of("to run, a day", day, each));
        }

        var sales = Total("sales of a day", "sales of", money.Sales);
        var yearly = Total("fixed cost of a year", "yearly cost of", money.Yearly);
        if (sales is not { } sold)
        {
            return;
        }

        AddBreakEven(book, money, unit, rows, (crew, use, sold, yearly));
        if (money.Surplus(f => f.Of) is not { } surplus)
        {
            return;
        }

        var left = book.Follows(
            "surplus of a year", surplus, "days a year x (sales - cost of a day) - fixed cost of a year",
            $"{Factor.Text(money.Days!.Of)} x (({sold.Figure.Text}) - ({book.Text(running)})) - ({book.Text(yearly?.Range ?? Range.Zero)})",
            [FigureInput.Of(sold.Figure), .. daily.Select(d => FigureInput.Of(d.Figure)), money.Days.Input]);
        rows.Add(SizeRow.Of("surplus a year", left, $"{Factor.Text(money.Days.Of)} days"));
        if (build is { Range.High: > 0 } spent)
        {
            AddPayback(book, terms, rows, spent, (left, surplus));
        }

        (Figure Figure, Range Range)? Total(string name, string each, IReadOnlyList<Term> of)
        {
            if (of.Count == 0)
            {
                return null;
            }

            var range = MoneyPlan.Sum(of, f => f.Of);
            return (book.Sum(name, [.. of.Select(t => book.Line(each, t))], range), range);
        }
    }

    private static void AddBreakEven(
        MoneyBook book, MoneyPlan money, string unit, List<SizeRow> rows,
        ((Figure Figure, Range Range)? Crew, (Figure Figure, Range Range)? Use, (Figure Figure, Range Range) Sales,
            (Figure Figure, Range Range)? Yearly) of)
    {
        if (money.Items <= 0 || money.Days is not { Of.Low: > 0 } days)
        {
            return;
        }

        double items = money.Items;
        var crew = of.Crew?.Range ?? Range.Zero;
        var year = of.Yearly?.Range ?? Range.Zero;
        var fixedCost = crew + new Range(year.Low / days.Of.High, year.High / days.Of.Low);
        var (price, piece) = ((1 / items) * of.Sales.Range, (1 / items) * (of.Use?.Range ?? Range.Zero));
        if (Worth.BreakEven(fixedCost.Low, price.High, piece.Low) is not { } low)
        {
            return;
        }

        double? high = Worth.BreakEven(fixedCost.High, price.Low, piece.High);
        var even = book.Number(
            "break-even", Math.Ceiling(low - 1e-9), high is { } most ? Math.Ceiling(most - 1e-9) : null, $"{unit} a day",
            "fixed cost of a day / (price - cost that goes with one)",
            $"({book.Text(fixedCost)}) / (({book.Text(price)}) - ({book.Text(piece)}))",
            [
                .. new[] { of.Crew, of.Use, of.Sales, of.Yearly }.OfType<(Figure Figure, Range Range)>()
                    .Select(p => FigureInput.Of(p.Figure)), days.Input]);
        rows.Add(SizeRow.Of("break-even", even, $"the day makes {QuantityText.Plain(items, 0)}; building not counted"));
    }

    private static void AddPayback(
        MoneyBook book, Terms terms, List<SizeRow> rows, (Figure Figure, Range Range) build, (Figure Figure, Range Range) surplus)
    {
        if (Worth.Payback(build.Range.Low, surplus.Range.High) is not { } soonest)
        {
            rows.Add(new SizeRow("payback", "never", "what comes in does not pay for the year", null));
            return;
        }

        var back = book.Number(
            "payback", soonest, Worth.Payback(build.Range.High, surplus.Range.Low), "years", "cost to build / surplus of a year",
            $"({build.Figure.Text}) / ({surplus.Figure.Text})", FigureInput.Of(build.Figure), FigureInput.Of(surplus.Figure));
        string worth = "";
        if (terms.Present(build.Range, surplus.Range) is { } present)
        {
            var now = book.Follows(
                "net present value", present, "surplus of a year x (1 - (1 + interest)^-years) / interest - cost to build",
                $"interest {Factor.Text(terms.Interest!.Of)} per cent, {Factor.Text(terms.Life!.Of)} years, ({surplus.Figure.Text}), "
                    + $"({build.Figure.Text})",
                FigureInput.Of(surplus.Figure), FigureInput.Of(build.Figure), terms.Interest.Input, terms.Life.Input);
            worth = $"worth {now.Text} now";
        }

        rows.Add(SizeRow.Of("payback", back, worth));
    }
}
