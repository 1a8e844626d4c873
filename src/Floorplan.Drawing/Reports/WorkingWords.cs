using Floorplan.Language.Text;
using Floorplan.Sizing.Working;

namespace Floorplan.Drawing.Reports;

/// <summary>A working in words, the same on a screen, on a page and on paper.</summary>
public static class WorkingWords
{
    /// <summary><c>flow x time (scald)</c></summary>
    public static string Name(Figure figure) => figure.Of == Figure.WholePlan ? figure.Name : $"{figure.Name} ({figure.Of})";

    /// <summary>What goes in and where it comes from: <c>wash-down 60 min: line 151 of the plan</c>.</summary>
    /// <param name="plan">Text of the plan: lines of other files are told with their file.</param>
    public static string Of(FigureInput input, SourceText? plan)
        => $"{(input.Worked is { } worked ? Name(worked) : input.Name)} {input.Text}: {Origin(input, plan)}";

    private static string Origin(FigureInput input, SourceText? plan) => input switch
    {
        { Worked: not null } => "worked out before",
        { Source: { } source } => source.Text,
        { Line: { } line } => FormattableString.Invariant($"line {line.Position.Line} of ")
            + (plan is null || ReferenceEquals(line.Source, plan) ? "the plan" : line.Source.Path),
        _ => "",
    };
}
