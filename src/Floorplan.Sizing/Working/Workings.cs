using Floorplan.Language.Quantities;

namespace Floorplan.Sizing.Working;

/// <summary>
/// Makes the figures of one subject and keeps them in the order in which they are worked out. A figure that goes into another is made
/// before it.
/// </summary>
/// <param name="units">The plan's.</param>
internal sealed class Workings(UnitSystem units)
{
    private readonly List<Figure> figures = [];

    public IReadOnlyList<Figure> Figures => figures;

    public UnitSystem Units => units;

    /// <param name="value">In the base unit of <paramref name="measure"/>.</param>
    /// <param name="formula">In words or letters, the same for every plan.</param>
    /// <param name="substituted">The formula with the numbers of this plan, in its units.</param>
    public Figure Of(
        string name, string of, double value, Measure measure, string formula, string substituted, Source source,
        params ReadOnlySpan<FigureInput> inputs)
        => Of(name, of, value, measure.Kind(), Text(value, measure), formula, substituted, source, inputs);

    /// <summary>A figure whose unit is no <see cref="Measure"/>: a number, a factor, a bought size, a length.</summary>
    /// <param name="text">The value with its unit.</param>
    public Figure Of(
        string name, string of, double value, QuantityKind kind, string text, string formula, string substituted, Source source,
        params ReadOnlySpan<FigureInput> inputs)
    {
        var figure = new Figure
        {
            Name = name,
            Of = of,
            Value = value,
            Kind = kind,
            Text = text,
            Inputs = [.. inputs],
            Formula = formula,
            Substituted = substituted,
            Source = source,
        };
        figures.Add(figure);
        return figure;
    }

    /// <summary>A figure worked out elsewhere, told with this subject too.</summary>
    public Figure Add(Figure figure)
    {
        figures.Add(figure);
        return figure;
    }

    /// <summary>For a substituted formula: the value as printed, with its unit.</summary>
    public string Text(double value, Measure measure) => QuantityText.Of(value, measure, units);

    /// <summary>For a substituted formula: fine enough to reckon on with.</summary>
    public string Fine(double value, Measure measure) => QuantityText.Fine(value, measure, units);
}
