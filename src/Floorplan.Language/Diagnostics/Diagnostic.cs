using Floorplan.Language.Text;

namespace Floorplan.Language.Diagnostics;

/// <summary>A mistake in the text. The message stands alone in plain words and has no full stop at its end.</summary>
/// <param name="Code">A permanent kebab-case name of the fault, such as <c>unknown-word</c>.</param>
/// <param name="Message">What is wrong: what was expected and what was found.</param>
/// <param name="Span">The smallest useful stretch of text.</param>
/// <param name="Help">A way out, or null: what to write, near names.</param>
/// <param name="Related">Other places that explain it, such as the first of two definitions.</param>
public sealed record Diagnostic(
    Severity Severity,
    string Code,
    string Message,
    SourceSpan Span,
    string? Help = null,
    IReadOnlyList<RelatedSpan>? Related = null);
