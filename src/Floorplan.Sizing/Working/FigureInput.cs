using Floorplan.Language.Text;

namespace Floorplan.Sizing.Working;

/// <summary>One value that goes into a figure. It comes from exactly one of three: a line of the plan, a source, another figure.</summary>
public sealed record FigureInput
{
    private FigureInput(string name, string text)
    {
        Name = name;
        Text = text;
    }

    public string Name { get; }

    /// <summary>The value with its unit, as the working shows it.</summary>
    public string Text { get; }

    /// <summary>The statement or words of the plan that say it; null when the plan does not.</summary>
    public SourceSpan? Line { get; private init; }

    /// <summary>A published figure, common practice or an assumption of ours; null when the plan says it or it is worked out.</summary>
    public Source? Source { get; private init; }

    /// <summary>The figure that it is the result of.</summary>
    public Figure? Worked { get; private init; }

    /// <summary>Said in the plan.</summary>
    public static FigureInput Said(string name, string text, SourceSpan line) => new(name, text) { Line = line };

    /// <summary>Not said in the plan: published, common practice or assumed.</summary>
    public static FigureInput Taken(string name, string text, Source source) => new(name, text) { Source = source };

    /// <summary>Worked out before.</summary>
    public static FigureInput Of(Figure figure) => new(figure.Name, figure.Text) { Worked = figure };
}
