using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cost;

/// <summary>Makes the figures of money: each line, its sums, and what follows from them.</summary>
internal sealed class MoneyBook(Workings work, string currency)
{
    private static readonly Source Rates = new("quantities of the plan times the owner's rates", Origin.CommonPractice);
    private static readonly Source Sums = new("sum of the lines", Origin.CommonPractice);
    private static readonly Source Textbook = new("textbook formula, interest and inflation left out", Origin.CommonPractice);

    /// <summary><c>1200 to 1800 EUR</c></summary>
    public string Text(Range range) => $"{Factor.Text(range)} {currency}".TrimEnd();

    public string Text(double amount) => Text(Range.Of(amount));

    /// <param name="prefix">Begins the name: <c>cost of</c>.</param>
    public Figure Line(string prefix, Term term) => Of(
        $"{prefix} {term.Name}", term.Of, term.Value, "amount x rate",
        string.Join(" x ", new[] { QuantityText.Plain(term.Quantity, 3) }.Concat(term.Factors.Select(f => Brackets(f.Of)))), Rates,
        [.. term.Inputs, .. term.Factors.Select(f => f.Input)]);

    public Figure Sum(string name, IReadOnlyList<Figure> lines, Range range) => Of(
        name, Figure.WholePlan, range, "sum of the lines", lines.Count == 0 ? "none" : WorkingText.Sum([.. lines.Select(l => l.Text)]),
        Sums, [.. lines.Select(FigureInput.Of)]);

    public Figure Follows(string name, Range range, string formula, string substituted, params IReadOnlyList<FigureInput> inputs)
        => Of(name, Figure.WholePlan, range, formula, substituted, Textbook, inputs);

    /// <summary>Not money: years, pieces.</summary>
    /// <param name="high">Null where there is none.</param>
    public Figure Number(
        string name, double low, double? high, string unit, string formula, string substituted, params IReadOnlyList<FigureInput> inputs)
    {
        string text = high is not { } most ? $"{QuantityText.Plain(low, 1)} {unit} or never"
            : QuantityText.Plain(low, 1) == QuantityText.Plain(most, 1) ? $"{QuantityText.Plain(low, 1)} {unit}"
            : $"{QuantityText.Plain(low, 1)} to {QuantityText.Plain(most, 1)} {unit}";
        return work.Of(
            name, Figure.WholePlan, high ?? low, QuantityKind.Count, text, formula, substituted, Textbook, [.. inputs]);
    }

    private static string Brackets(Range range) => range.IsOne ? Factor.Text(range) : $"({Factor.Text(range)})";

    private Figure Of(
        string name, string of, Range range, string formula, string substituted, Source source, IReadOnlyList<FigureInput> inputs)
        => work.Of(name, of, range.High, QuantityKind.Money, Text(range), formula, substituted, source, [.. inputs]);
}
