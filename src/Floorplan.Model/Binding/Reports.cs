using Floorplan.Language.Diagnostics;
using Floorplan.Language.Quantities;
using Floorplan.Language.Text;

namespace Floorplan.Model.Binding;

/// <summary>Collects the mistakes of one plan and words its lengths in the plan's units.</summary>
internal sealed class Reports(UnitSystem units)
{
    /// <summary>Names that are looked for near ones in one file; after so many the reader has enough to mend. Own bound.</summary>
    private const int MostHints = 100;

    private readonly List<Diagnostic> all = [];
    private int hints;

    public UnitSystem Units { get; } = units;

    public IReadOnlyList<Diagnostic> All => all;

    public void Error(string code, string message, SourceSpan span, string? help = null, params RelatedSpan[] related)
        => all.Add(new Diagnostic(Severity.Error, code, message, span, help, related.Length == 0 ? null : related));

    public void Warning(string code, string message, SourceSpan span, string? help = null)
        => all.Add(new Diagnostic(Severity.Warning, code, message, span, help));

    public void Add(Diagnostic diagnostic) => all.Add(diagnostic);

    /// <summary><c>did you mean `gutting`?</c>, or null when nothing is near.</summary>
    public string? Near(string wanted, IEnumerable<string> names) => hints++ < MostHints ? NearNames.Hint(wanted, names) : null;

    /// <summary>An example of lengths as this plan writes bare ones: millimetres, or inches.</summary>
    public string Example(string millimetres, string inches) => Units == UnitSystem.Metric ? millimetres : inches;

    /// <summary><c>2600 mm</c> or <c>8'-6 1/2"</c>.</summary>
    public string Text(Length length) => QuantityText.Length(length, Units);
}
