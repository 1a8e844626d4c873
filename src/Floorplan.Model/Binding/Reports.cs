using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Text;

namespace Floorplan.Model.Binding;

/// <summary>Collects the mistakes of one plan and words its lengths in the plan's units.</summary>
internal sealed class Reports(UnitSystem units)
{
    private readonly List<Diagnostic> all = [];

    public UnitSystem Units { get; set; } = units;

    public IReadOnlyList<Diagnostic> All => all;

    public void Error(string code, string message, SourceSpan span, string? help = null, params RelatedSpan[] related)
        => all.Add(new Diagnostic(Severity.Error, code, message, span, help, related.Length == 0 ? null : related));

    public void Warning(string code, string message, SourceSpan span, string? help = null)
        => all.Add(new Diagnostic(Severity.Warning, code, message, span, help));

    public void Note(string code, string message, SourceSpan span, string? help = null)
        => all.Add(new Diagnostic(Severity.Note, code, message, span, help));

    public void Add(Diagnostic diagnostic) => all.Add(diagnostic);

    /// <summary><c>2600 mm</c> or <c>8'-6 1/2"</c>.</summary>
    public string Text(Length length) => LengthText.Sentence(length, Units);
}
