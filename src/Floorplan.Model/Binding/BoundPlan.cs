using Floorplan.Language.Diagnostics;

namespace Floorplan.Model.Binding;

/// <summary>A plan and every mistake of its text, the parser's included. The plan is drawn only when none of them is an error.</summary>
/// <param name="Plan">Null without a usable shell.</param>
public sealed record BoundPlan(Plan? Plan, IReadOnlyList<Diagnostic> Diagnostics)
{
    public bool HasErrors => Diagnostics.Any(d => d.Severity == Severity.Error);
}
