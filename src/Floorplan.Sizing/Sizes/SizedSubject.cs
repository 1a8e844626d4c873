using Floorplan.Language.Text;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Sizes;

/// <summary>One subject that a unit is sized for, such as hot water: what comes out, each with its working, and what is not said.</summary>
/// <param name="Name">As a heading, in the trade's word: <c>Water</c>.</param>
/// <param name="Rows">What a reader asks first; few enough for one screen with the other subjects.</param>
public sealed record SizedSubject(string Name, IReadOnlyList<SizeRow> Rows)
{
    /// <summary>
    /// All figures in the order in which they are worked out, those of <see cref="Rows"/> and <see cref="Tables"/> among them.
    /// </summary>
    public IReadOnlyList<Figure> Figures { get; init; } = [];

    /// <summary>Schedules: pipes, circuits, loads of a room.</summary>
    public IReadOnlyList<SizeTable> Tables { get; init; } = [];

    /// <summary>What changes the answer most, the largest first; empty where nothing is a range.</summary>
    public IReadOnlyList<SizeSwing> Swings { get; init; } = [];

    /// <summary>What could not be sized, with what to write.</summary>
    public IReadOnlyList<NotSaid> Missing { get; init; } = [];

    /// <summary>Whole sentences: what can hurt, and who decides.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];
}

/// <summary>One answer.</summary>
/// <param name="What">What it is, without the subject: <c>heater</c>.</param>
/// <param name="Value">With its unit: <c>9.5 kW</c>; a range where the plan leaves it open.</param>
/// <param name="Remark">A few words, or empty: <c>storage 120 L, ready in 2 h</c>.</param>
/// <param name="Figure">The figure that it is; null where the answer is in words.</param>
public sealed record SizeRow(string What, string Value, string Remark, Figure? Figure)
{
    public static SizeRow Of(string what, Figure figure, string remark = "") => new(what, figure.Text, remark, figure);
}

/// <summary>One figure from its low to its high end, and the answer at both.</summary>
/// <param name="Name">Of the figure, with its ends: <c>bird: 18 to 22</c>.</param>
public sealed record SizeSwing(string Name, double AtLow, double AtHigh, string TextAtLow, string TextAtHigh);

/// <summary>What the plan does not say, so that something could not be sized.</summary>
/// <param name="What">As the end of a sentence: <c>power of plucker</c>.</param>
/// <param name="Write">
/// What to write and where, the words of the plan between back quotes: <c>`needs power 230 V 1.1 kW` in station plucker</c>; all of it is
/// of the plan where there are none.
/// </param>
/// <param name="Span">Where it would stand.</param>
public sealed record NotSaid(string What, string Write, SourceSpan Span)
{
    /// <summary>For sentences: the words of the plan always between back quotes.</summary>
    public string Quoted => Write.Contains('`', StringComparison.Ordinal) ? Write : $"`{Write}`";
}

/// <summary>A schedule that belongs to a subject; all cells as text, each row as long as the heads.</summary>
/// <param name="Title">Such as <c>Pipes, run by run</c>.</param>
/// <param name="Figures">The figures that its cells show.</param>
public sealed record SizeTable(
    string Title, IReadOnlyList<string> Heads, IReadOnlyList<IReadOnlyList<string>> Rows, IReadOnlyList<Figure> Figures);
