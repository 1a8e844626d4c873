using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;

namespace Floorplan.Checks.Mending;

/// <summary>Looks for small changes of a plan's text that mend its errors and warnings. Every change is proven by checking the changed text whole.</summary>
/// <param name="files">What the plan's <c>use</c> statements may read.</param>
public sealed class Mender(IPlanFiles files)
{
    /// <summary>Whole checks that one run may take, so that it ends soon on any plan; own choice.</summary>
    private const int MostChecks = 1500;

    private int checks;

    /// <summary>The proposals that mend one finding after the other, each on the text that the one before left; empty when none is found.</summary>
    public IReadOnlyList<Proposal> Mend(SourceText source)
    {
        var made = new List<Proposal>();
        var given = new HashSet<string>();
        var (plan, findings) = Check(source);
        while (plan is not null && Next(plan, findings, given) is { } proposal)
        {
            made.Add(proposal);
            (plan, findings) = Check(new SourceText(proposal.Text, source.Path));
        }

        return made;
    }

    /// <summary>The first standing finding, heaviest first, for which a change is found.</summary>
    private Proposal? Next(Plan plan, IReadOnlyList<Finding> findings, HashSet<string> given)
    {
        foreach (var finding in findings.Where(f => f.AcceptedBy is null && f.Severity >= Severity.Warning))
        {
            // A finding that no change mended is not tried again after another was mended.
            if (given.Add(finding.Key) && Propose(plan, findings, finding) is { } proposal)
            {
                return proposal;
            }
        }

        return null;
    }

    private Proposal? Propose(Plan plan, IReadOnlyList<Finding> findings, Finding finding)
    {
        foreach (var change in Changes.For(plan, finding))
        {
            if (checks >= MostChecks)
            {
                return null;
            }

            string text = change.Apply(plan.Source.Content);
            var (changed, after) = Check(new SourceText(text, plan.Source.Path));
            if (changed is not null && Mends(finding, findings, after))
            {
                int line = plan.Source.PositionOf(change.Start).Line;
                return new Proposal(finding, line, change.Start == plan.Source.Content.Length ? "" : Line(plan.Source.Content, line), Line(text, line), text);
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
        || (before.Measured is { } a && after.Measured is { } b && after.LimitValue is { } limit && Math.Abs(b - limit) > Math.Abs(a - (before.LimitValue ?? limit)) + 1);

    private (Plan? Plan, IReadOnlyList<Finding> Findings) Check(SourceText source)
    {
        checks++;
        var bound = PlanBinder.Bind(SyntaxTree.Parse(source), files);
        return bound.Plan is { } plan && bound.Diagnostics.All(d => d.Severity != Severity.Error)
            ? (plan, Checker.Check(plan, new FloorSpace(plan)))
            : (null, []);
    }

    private static string Line(string text, int number) => text.Split('\n').ElementAtOrDefault(number - 1)?.TrimEnd('\r') ?? "";
}
