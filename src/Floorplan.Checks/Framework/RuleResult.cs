using Floorplan.Checks.Findings;
using Floorplan.Checks.Limits;
using Floorplan.Model;

namespace Floorplan.Checks.Framework;

/// <summary>What one rule gave on one plan, as an inspector reads it off: the rule, the figure that held, the result.</summary>
/// <param name="Limit">The rule's main figure as it held under the plan's code; null when the rule has none or none applies.</param>
/// <param name="Findings">Its findings, accepted ones too.</param>
public sealed record RuleResult(Rule Rule, AppliedLimit? Limit, IReadOnlyList<Finding> Findings)
{
    /// <summary>The figure that held, or else where the rule comes from.</summary>
    public string FigureAndSource { get; init; } = Limit?.Text ?? Rule.Sources[0].Text;

    /// <summary><c>nothing found</c>, <c>2 errors, 1 note, 1 accepted</c>.</summary>
    public string Text => FindingCounts.Of(Findings).Text("nothing found");

    /// <summary>
    /// Every rule that applies to the plan, in the order of the catalogue: rules whose every figure is of other codes are left out, and
    /// so are those about the file itself.
    /// </summary>
    public static IReadOnlyList<RuleResult> Of(Plan plan, IReadOnlyList<Finding> findings)
    {
        var limits = new PlanLimits(plan);
        var byRule = findings.ToLookup(f => f.Rule);
        return
        [
            .. from rule in RuleCatalogue.All
               where rule.Group != RuleGroup.File && rule.AppliesTo(plan)
               let keys = rule.Limits.Select(l => l.Key).Distinct().Where(key => rule.Uses(plan, key))
               let figures = keys.OrderBy(key => key == rule.MainKey(plan) ? 0 : 1).Select(key => limits.Find(rule, key)).ToList()
               where figures.Count == 0 || figures.Exists(f => f is not null) || byRule.Contains(rule.Name)
               select new RuleResult(rule, figures.Find(f => f is not null), [.. byRule[rule.Name]])
               {
                   FigureAndSource = figures.Find(f => f is not null)?.Text ?? rule.SourceFor(plan).Text,
               },
        ];
    }
}
