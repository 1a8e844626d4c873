using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;
using Floorplan.Sizing;

namespace Floorplan.Checks.Mending;

/// <summary>
/// Looks for small changes of a plan's text that mend its errors and warnings. A change is first tried against the rule alone that found
/// the fault; one that mends it is proven by checking the changed text whole.
/// </summary>
/// <param name="files">What the plan's <c>kinds from</c> statements may read.</param>
public sealed class Mender(IPlanFiles files)
{
    /// <summary>
    /// Letters of changed texts that one run reads, so that it ends soon on any plan, and the same way on any machine; own choice.
    /// </summary>
    private const long Proposing = 1_500_000;
    private const long Mending = 12_000_000;

    private long left;

    /// <summary>The findings, each with the change that mends it alone where one is found.</summary>
    public IReadOnlyList<Finding> Propose(Plan plan, IReadOnlyList<Finding> findings)
    {
        left = Proposing;
        return [.. findings.Select(f => IsTried(f) ? f with { Proposal = For(plan, findings, f) } : f)];
    }

    /// <summary>
    /// The findings mended one after the other with what mends them, each on the text that the one before left; empty when nothing
    /// does.
    /// </summary>
    public IReadOnlyList<Finding> Mend(SourceText source)
    {
        left = Mending;
        var mended = new List<Finding>();
        var given = new HashSet<string>();
        var (plan, findings) = Check(source, RuleCatalogue.All);
        while (plan is not null && Next(plan, findings, given) is { Proposal: { } proposal } next)
        {
            mended.Add(next);
            (plan, findings) = Check(new SourceText(proposal.Text, source.Path), RuleCatalogue.All);
        }

        return mended;
    }

    /// <summary>
    /// The first standing finding, heaviest first, for which a change is found. One that no change mended is not tried again after
    /// another was mended.
    /// </summary>
    private Finding? Next(Plan plan, IReadOnlyList<Finding> findings, HashSet<string> given) => findings
        .Where(f => IsTried(f) && given.Add(f.Key))
        .Select(f => f with { Proposal = For(plan, findings, f) })
        .FirstOrDefault(f => f.Proposal is not null);

    private static bool IsTried(Finding finding) => finding.AcceptedBy is null && finding.Severity >= Severity.Warning;

    private Proposal? For(Plan plan, IReadOnlyList<Finding> findings, Finding finding)
    {
        var rule = RuleCatalogue.All.Where(r => r.Name == finding.Rule).ToList();
        foreach (var change in Changes.For(plan, finding))
        {
            if (left <= 0)
            {
                return null;
            }

            var proposal = Proposal.Of(plan.Source.Content, change);
            var changed = new SourceText(proposal.Text, plan.Source.Path);
            if (Check(changed, rule) is { Plan: not null } alone && alone.Findings.All(f => f.Key != finding.Key)
                && Mends(finding, findings, Check(changed, RuleCatalogue.All).Findings))
            {
                return proposal;
            }
        }

        return null;
    }

    private static bool Mends(Finding finding, IReadOnlyList<Finding> before, IReadOnlyList<Finding> after)
    {
        var old = before.ToLookup(f => f.Key);
        return after.All(f => f.Key != finding.Key && old[f.Key].Any(o => !IsWorse(o, f)));
    }

    private static bool IsWorse(Finding before, Finding after) =>
        (after.AcceptedBy is null && (before.AcceptedBy is not null || after.Severity > before.Severity))
        || (before.Measured is { } a
            && after.Measured is { } b
            && after.LimitValue is { } limit
            && Math.Abs(b - limit) > Math.Abs(a - (before.LimitValue ?? limit)) + 1);

    private (Plan? Plan, IReadOnlyList<Finding> Findings) Check(SourceText source, IReadOnlyList<Rule> rules)
    {
        left -= source.Content.Length;
        var bound = PlanBinder.Bind(SyntaxTree.Parse(source), files);
        return bound.Plan is { } plan && bound.Diagnostics.All(d => d.Severity != Severity.Error)
            ? (plan, Checker.Check(new PlanFacts(plan, new FloorSpace(plan)), rules))
            : (null, []);
    }
}
