using Floorplan.Language.Parsing;
using Floorplan.Language.Words;

namespace Floorplan.Language.Details;

/// <summary>
/// One thing that a statement may say, declared once: its words, what it means, how it is written and how it is read. Completion,
/// the guide, near names, the ends of lists and the table of the model all take it from here.
/// </summary>
public abstract class Detail
{
    private protected Detail(string word, string says, IReadOnlyList<string> examples)
    {
        Word = word;
        Says = says;
        Examples = examples;
        Forms = [word];
    }

    /// <summary>The word or words that it starts with, such as <c>size</c> or <c>air gap</c>.</summary>
    public string Word { get; }

    /// <summary>What it means, one plain sentence without a full stop.</summary>
    public string Says { get; }

    /// <summary>Ways of writing it, each different from the one before.</summary>
    public IReadOnlyList<string> Examples { get; }

    /// <summary>
    /// All words that it may start with, <see cref="Word"/> first: <c>size</c> and <c>round</c>. Only one of them may be said.
    /// </summary>
    public IReadOnlyList<string> Forms { get; init; }

    /// <summary>May be said on several lines.</summary>
    public bool Repeatable { get; init; }

    /// <summary>Without its word it may stand several times, as the terms of a place do.</summary>
    public bool BareRepeats { get; init; }

    /// <summary>Details of one group say the same thing in different ways, so that only one of them may be said; null for none.</summary>
    public string? Group { get; init; }

    /// <summary>Another detail may follow without a comma: <c>hung underside 1900</c>.</summary>
    public bool RunsOn { get; init; }

    public Needed Needed { get; init; }

    /// <summary>An example for a plan in feet; null where the first of the others fits it too.</summary>
    public string? InFeet { get; init; }

    public Use Use { get; init; } = Use.Used;

    /// <summary>Keywords of the statements, or kinds of shell, that have it; empty for all that the parser reads.</summary>
    public IReadOnlyList<string> Of { get; init; } = [];

    public bool IsOf(string keyword) => Of.Count == 0 || Of.Contains(keyword);

    /// <summary>Reads what stands after its words; null, with a mistake told, when it cannot be read.</summary>
    internal abstract object? Read(Cursor c);

    /// <summary>Whether two sayings of a repeatable detail can say the same part at all.</summary>
    internal abstract bool MayClash { get; }

    /// <summary>Whether two sayings of a repeatable detail say the same part, so that one would be lost.</summary>
    internal abstract bool Clash(object? first, object? second);
}

/// <typeparam name="T">What it is in the syntax.</typeparam>
public sealed class Detail<T> : Detail
    where T : class
{
    private readonly Func<Cursor, T?> read;

    internal Detail(string word, string says, IReadOnlyList<string> examples, Func<Cursor, T?> read)
        : base(word, says, examples) => this.read = read;

    /// <summary>For a repeatable detail: whether two of its values say the same part twice; null when they never do.</summary>
    internal Func<T, T, bool>? Clashes { get; init; }

    internal override bool MayClash => Clashes is not null;

    internal override object? Read(Cursor c) => read(c);

    internal override bool Clash(object? first, object? second) =>
        Clashes is not null && first is T a && second is T b && Clashes(a, b);
}
