using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Sizing;

namespace Floorplan.Checks.Framework;

/// <summary>Runs every rule over one plan.</summary>
public static class Checker
{
    /// <summary>Of one rule no more are looked for; own choice.</summary>
    public const int MostOfOneRule = 500;

    /// <summary>
    /// Heaviest first, accepted ones last, then in the order of the file. An exception from a rule is our bug and passes through.
    /// </summary>
    public static IReadOnlyList<Finding> Check(PlanFacts facts) => Check(facts, RuleCatalogue.All);

    /// <summary>With rules of the caller's choice.</summary>
    public static IReadOnlyList<Finding> Check(PlanFacts facts, IReadOnlyList<Rule> rules)
    {
        var plan = facts.Plan;
        var context = new CheckContext(facts);
        var found = new List<Finding>();
        context.Found = found;
        foreach (var rule in rules.Where(r => r.AppliesTo(plan)))
        {
            // A rule may look at what stands in Found, so its own findings join only when it is done.
            found.AddRange(Bounded(rule, context).ToList());
        }

        found = found.ConvertAll(f => f with { AcceptedBy = Acceptances.Of(plan, f) });
        return [.. FindingCauses.Keep(found, rules, plan)
            .OrderBy(f => f.AcceptedBy is not null)
            .ThenByDescending(f => f.Severity)
            .ThenBy(f => f.Span.Source == plan.Source ? "" : f.Span.Source.Path, StringComparer.Ordinal)
            .ThenBy(f => f.Span.Start)
            .ThenBy(f => f.Rule, StringComparer.Ordinal)
            .ThenBy(f => string.Join(' ', f.Things), StringComparer.Ordinal)];
    }

    private static IEnumerable<Finding> Bounded(Rule rule, CheckContext context)
    {
        int count = 0;
        foreach (var finding in rule.Check(context))
        {
            if (count++ < MostOfOneRule)
            {
                yield return finding;
                continue;
            }

            yield return CheckContext.Find(
                rule, Severity.Note, [], $"more than {MostOfOneRule} findings of {rule.Name}; the rest is not looked for",
                "mend these first and check again", finding.Span);
            yield break;
        }
    }
}
