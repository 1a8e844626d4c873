using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;

namespace Floorplan.Language.Parsing;

/// <summary>
/// Collects the mistakes of one file, up to a bound. Warnings have a bound of their own, so that they never hide an error.
/// </summary>
internal sealed class Mistakes
{
    private readonly List<Diagnostic> all = [];
    private int warnings;

    public IReadOnlyList<Diagnostic> All => [.. all.OrderBy(d => d.Span.Start)];

    /// <summary>No more errors are kept, so there is no point in reading on.</summary>
    public bool Full { get; private set; }

    public void Add(string code, string message, SourceSpan span, string? help = null, RelatedSpan? related = null)
    {
        if (Full)
        {
            return;
        }

        all.Add(new Diagnostic(Severity.Error, code, message, span, help, related is null ? null : [related]));
        if (all.Count - warnings == Bounds.MostMistakes)
        {
            Full = true;
            all.Add(new Diagnostic(
                Severity.Error, "too-many-mistakes", $"more than {Bounds.MostMistakes} mistakes; the rest of the file is not read", span,
                "mend the first ones and run it again"));
        }
    }

    public void Warn(string code, string message, SourceSpan span, string? help)
    {
        if (warnings < Bounds.MostMistakes)
        {
            warnings++;
            all.Add(new Diagnostic(Severity.Warning, code, message, span, help));
        }
    }
}
