using Floorplan.Language.Diagnostics;
using Floorplan.Model.Limits;

namespace Floorplan.Checks.Limits;

/// <summary>One figure as it holds for one plan.</summary>
/// <param name="Value">In the unit of <paramref name="Published"/>.</param>
/// <param name="Severity">What a finding against it weighs.</param>
/// <param name="Text">With origin, for findings and sheets: <c>limit 7.6 m (FDA/CFP Plan Review Guide, Part 4, 2000)</c>.</param>
/// <param name="Published">The figure of the catalogue.</param>
/// <param name="SetBy">The plan's own <c>limit</c> statement, or null.</param>
public sealed record AppliedLimit(double Value, Severity Severity, string Text, RuleLimit Published, LimitOverride? SetBy)
{
    /// <summary>It does not bind this plan and is only quoted, as a note.</summary>
    public bool IsAdvice { get; init; }
}
