using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;

namespace Floorplan.Checks.Mending;

/// <summary>
/// Looks for small changes of a plan's text that mend its errors and warnings. A change is first tried against the rule alone that found
/// the fault; one that mends it is proven by all rules.
/// </summary>
/// <param name="files">What the plan's <c>kinds from</c> statements may read.</param>
/// <param name="work">Steps that one run may take, besides those of the change that it is at; null takes the usual ones.</param>
public sealed class Mender(IPlanFiles files, long? work = null)
{
    /// <summary>
    /// Steps (<see cref="Steps"/>) that one run takes, so that it ends soon on any plan, and the same way on any machine: under a second
    /// beside a check, and a few seconds where mending was asked for. Own choice.
    /// </summary>
    public const long Proposing = 16_000_000;
    public const long Mending = 200_000_000;

    /// <summary>Takes longest, and no other rule's findings follow from it: it is asked when all others are content.</summary>
    private const string Last = "will-not-go-in";

    private static readonly IReadOnlyList<Rule> others = [.. RuleCatalogue.All.Where(r => r.Name != Last)];

    /// <summary>Of one run; the change that it is at when this is used up may take as much again.</summary>
    private long allowed;
    private long end;
    private int tried;
    private bool isAll;

    /// <summary>The findings, each with the change that mends it alone where one is found within the work allowed.</summary>
    public Proposals Propose(Plan plan, IReadOnlyList<Finding> findings)
    {
        Begin(work ?? Proposing);
        int left = findings.Count(IsTried);
        var proposed = new List<Finding>();
        foreach (var finding in findings)
        {
            // What one finding leaves of its part goes to those after it.
            proposed.Add(IsTried(finding)
                ? finding with { Proposal = For(plan, findings, finding, (end - Steps.Taken) / left--) }
                : finding);
        }

        return new Proposals(proposed, tried, isAll);
    }

    /// <summary>
    /// The findings mended one after the other with what mends them, each on the text that the one before left; empty when nothing
    /// does.
    /// </summary>
    public IReadOnlyList<Finding> Mend(SourceText source)
    {
        Begin(work ?? Mending);
        var mended = new List<Finding>();
        Steps.Within(allowed + (PlanBounds.MostMillionSteps * 1_000_000L), () => Mend(source, mended));
        return mended;
    }

    private void Mend(SourceText source, List<Finding> mended)
    {
        var given = new HashSet<string>();
        var text = TriedText.Of(source, files);
        while (text.Facts is { } facts && Next(facts.Plan, text.Check(RuleCatalogue.All), given) is { Proposal: { } proposal } next)
        {
            mended.Add(next);
            text = TriedText.Of(new SourceText(proposal.Text, source.Path), files);
        }
    }

    private void Begin(long steps) => (allowed, end, tried, isAll) = (steps, Steps.Taken + steps, 0, true);

    /// <summary>
    /// The first standing finding, heaviest first, for which a change is found. One that no change mended is not tried again after
    /// another was mended.
    /// </summary>
    private Finding? Next(Plan plan, IReadOnlyList<Finding> findings, HashSet<string> given)
    {
        int left = findings.Count(f => IsTried(f) && !given.Contains(f.Key));
        return findings
            .Where(f => IsTried(f) && given.Add(f.Key))
            .Select(f => f with { Proposal = For(plan, findings, f, (end - Steps.Taken) / Math.Max(1, left--)) })
            .FirstOrDefault(f => f.Proposal is not null);
    }

    private static bool IsTried(Finding finding) => finding.AcceptedBy is null && finding.Severity >= Severity.Warning;

    private Proposal? For(Plan plan, IReadOnlyList<Finding> findings, Finding finding, long steps)
    {
        long until = Steps.Taken + steps;
        var rule = RuleCatalogue.All.Where(r => r.Name == finding.Rule).ToList();
        foreach (var change in Changes.For(plan, finding))
        {
            if (Steps.Taken >= until || Steps.Taken + Steps.ToRead(plan.Source.Content) > end)
            {
                isAll = false;
                return null;
            }

            tried++;
            var proposal = Proposal.Of(plan.Source.Content, change);
            bool mends = false;
            if (!Steps.Within(end - Steps.Taken + allowed, () => mends = Mends(proposal, plan.Source.Path, rule, finding, findings)))
            {
                isAll = false;
                return null;
            }

            if (mends)
            {
                return proposal;
            }
        }

        return null;
    }

    private bool Mends(Proposal proposal, string path, IReadOnlyList<Rule> rule, Finding finding, IReadOnlyList<Finding> findings)
    {
        var text = TriedText.Of(new SourceText(proposal.Text, path), files);
        return text.Facts is not null
            && text.Check(rule).All(f => f.Key != finding.Key)
            && Mends(finding, findings, text.Check(others))
            && Mends(finding, findings, text.Check(RuleCatalogue.All));
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
}
