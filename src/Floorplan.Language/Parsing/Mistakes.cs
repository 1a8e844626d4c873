using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;

namespace Floorplan.Language.Parsing;

/// <summary>Collects the mistakes of one file, up to a bound.</summary>
internal sealed class Mistakes
{
    private readonly List<Diagnostic> all = [];
    private bool full;

    public IReadOnlyList<Diagnostic> All => [.. all.OrderBy(d => d.Span.Start)];

    public void Add(string code, string message, SourceSpan span, string? help = null, RelatedSpan? related = null, Severity severity = Severity.Error)
    {
        if (full)
        {
            return;
        }

        all.Add(new Diagnostic(severity, code, message, span, help, related is null ? null : [related]));
        if (all.Count == Bounds.MostMistakes)
        {
            full = true;
            all.Add(new Diagnostic(Severity.Error, "too-many-mistakes", $"more than {Bounds.MostMistakes} mistakes; the rest of the file is not listed", span, "mend the first ones and run it again"));
        }
    }
}
