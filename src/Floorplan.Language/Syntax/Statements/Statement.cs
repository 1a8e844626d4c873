using Floorplan.Language.Details;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>
/// One statement: its head line and its indented details. Parts that could not be read are null or missing and have a diagnostic.
/// </summary>
public abstract class Statement
{
    private readonly List<DetailSyntax> details = [];

    /// <summary>The first word, such as <c>station</c>.</summary>
    public required WordSyntax Keyword { get; init; }

    /// <summary>From the keyword to the end of the last detail.</summary>
    public SourceSpan Span { get; internal set; }

    /// <summary>From the keyword to the end of the head line's words.</summary>
    public SourceSpan HeadSpan { get; internal set; }

    /// <summary>The name that other statements use; null for statements without one.</summary>
    public NameSyntax? Name { get; internal set; }

    public TextSyntax? Label { get; internal set; }

    /// <summary>Every detail in the order written.</summary>
    public IReadOnlyList<DetailSyntax> Details => details;

    /// <summary>What is said of a detail; null when nothing is, or it could not be read.</summary>
    public T? Value<T>(Detail<T> detail)
        where T : class
    {
        for (int i = details.Count - 1; i >= 0; i--)
        {
            if (ReferenceEquals(details[i].Declared, detail) && details[i].Value is T value)
            {
                return value;
            }
        }

        return null;
    }

    /// <summary>All that is said of a detail that may be said several times, in the order written.</summary>
    public IReadOnlyList<T> Values<T>(Detail<T> detail)
        where T : class
    {
        List<T>? values = null;
        foreach (var said in details)
        {
            if (ReferenceEquals(said.Declared, detail) && said.Value is T value)
            {
                (values ??= []).Add(value);
            }
        }

        return values ?? (IReadOnlyList<T>)[];
    }

    internal void Add(DetailSyntax detail) => details.Add(detail);
}

/// <summary>One detail: its first word (empty for one without, such as a size on the head line) and its stretch of text.</summary>
public sealed record DetailSyntax(string Keyword, SourceSpan Span)
{
    /// <summary>Which detail it is; null for one that the statement does not have.</summary>
    public Detail? Declared { get; init; }

    /// <summary>What the detail reads; null when it could not be read.</summary>
    public object? Value { get; init; }
}
