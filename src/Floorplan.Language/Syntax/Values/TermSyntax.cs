using Floorplan.Language.Text;

namespace Floorplan.Language.Syntax.Values;

/// <summary>A term of the trade as a value, such as <c>single-phase</c>, and where it is written.</summary>
public sealed record TermSyntax<T>(T Value, SourceSpan Span)
    where T : struct, Enum;
