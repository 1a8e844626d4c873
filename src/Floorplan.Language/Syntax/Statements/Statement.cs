using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Statements;

/// <summary>One statement: its head line and its indented details. Parts that could not be read are null or missing and have a diagnostic.</summary>
public abstract class Statement
{
    /// <summary>The first word, such as <c>station</c>.</summary>
    public required WordSyntax Keyword { get; init; }

    /// <summary>From the keyword to the end of the last detail.</summary>
    public SourceSpan Span { get; internal set; }

    /// <summary>From the keyword to the end of the head line's words.</summary>
    public SourceSpan HeadSpan { get; internal set; }

    /// <summary>The name that other statements use; null for statements without one.</summary>
    public NameSyntax? Name { get; internal set; }

    public TextSyntax? Label { get; internal set; }

    /// <summary>Every detail in the order written, for tools that edit the text.</summary>
    public IReadOnlyList<DetailSyntax> Details { get; internal set; } = [];
}

/// <summary>One detail: its keyword (empty for a headless one, such as a size on the head line) and its stretch of text.</summary>
public sealed record DetailSyntax(string Keyword, SourceSpan Span);
