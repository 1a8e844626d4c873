using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Checks.Mending;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;
using Floorplan.Sizing;

namespace Floorplan.Cli.Input;

/// <summary>One plan taken through the pipeline up to its findings.</summary>
/// <param name="Plan">Null when the text has errors; then there is no facts and there are no findings.</param>
internal sealed record Examination(
    SourceText Source,
    IReadOnlyList<Diagnostic> Diagnostics,
    Plan? Plan,
    PlanFacts? Facts,
    IReadOnlyList<Finding> Findings)
{
    /// <summary>Null until <see cref="WithProposals"/> looked for them.</summary>
    public Proposals? Proposals { get; private init; }

    public bool HasErrors => Plan is null || Findings.Any(f => f.Severity == Severity.Error && f.AcceptedBy is null);

    /// <summary>With the changes of the text that <see cref="Mender"/> finds for the findings.</summary>
    public Examination WithProposals(IPlanFiles files)
    {
        if (Plan is null)
        {
            return this;
        }

        var proposals = new Mender(files).Propose(Plan, Findings);
        return this with { Findings = proposals.Findings, Proposals = proposals };
    }

    /// <param name="kept">What came of an earlier text of the plan, and takes note of this one; null works everything out.</param>
    /// <param name="work">Steps that it may take (<see cref="Steps"/>); a plan that takes more is refused.</param>
    public static Examination Of(
        SourceText source, IPlanFiles files, KeptPlan? kept = null, long work = PlanBounds.MostMillionSteps * 1_000_000L)
    {
        Examination? whole = null;
        if (Steps.Within(work, () => whole = Whole(source, files, kept)))
        {
            return whole!;
        }

        // Facts of a text that was left half checked are nothing to go on from.
        kept?.Facts = null;
        return new Examination(source, [TooMuchWork.Of(source)], null, null, []);
    }

    private static Examination Whole(SourceText source, IPlanFiles files, KeptPlan? kept)
    {
        Steps.Beside(Steps.ToRead(source.Content));
        var bound = PlanBinder.Bind(SyntaxTree.Parse(source), files);
        if (bound is not { HasErrors: false, Plan: { } plan })
        {
            return new Examination(source, bound.Diagnostics, null, null, []);
        }

        var facts = kept is null ? new PlanFacts(plan, new FloorSpace(plan)) : kept.Facts = new PlanFacts(plan, kept.Facts);
        return new Examination(source, bound.Diagnostics, plan, facts, Checker.Check(facts));
    }
}
