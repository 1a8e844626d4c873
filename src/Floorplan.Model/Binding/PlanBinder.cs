using Floorplan.Language.Diagnostics;
using Floorplan.Language.Parsing;
using Floorplan.Language.Syntax;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Binding.Reading;
using Floorplan.Model.Details;

namespace Floorplan.Model.Binding;

/// <summary>Turns a parsed file into a plan: resolves names, finds every place, works out rooms, walls and openings.</summary>
public static class PlanBinder
{
    /// <summary>
    /// Never throws for what the text says. The plan holds all that is whole, even beside errors; it is null only without a usable
    /// shell.
    /// </summary>
    /// <param name="tree">The parsed file.</param>
    /// <param name="files">Where <c>kinds from</c> statements read from.</param>
    public static BoundPlan Bind(SyntaxTree tree, IPlanFiles files)
    {
        var reports = new Reports(tree.Units);
        foreach (var diagnostic in tree.Diagnostics)
        {
            reports.Add(diagnostic);
        }

        var draft = new PlanReader(tree, files, reports).Read();
        var plan = draft is null ? null : new PlanAssembler(draft, reports).Assemble() with { Said = SaidThings.Of(tree.Statements) };
        return new BoundPlan(plan, Bounded(Ordered(FollowOns.Drop(reports.All, tree), tree)));
    }

    /// <summary>After so many nobody reads on; errors and warnings have a bound each, so that neither hides the other.</summary>
    private static IReadOnlyList<Diagnostic> Bounded(IReadOnlyList<Diagnostic> all)
    {
        var kept = all.GroupBy(d => d.Severity).SelectMany(g => g.Take(Bounds.MostMistakes)).ToHashSet(ReferenceEqualityComparer.Instance);
        if (kept.Count == all.Count || all.Any(d => d.Code == "too-many-mistakes"))
        {
            return all;
        }

        var first = all.First(d => !kept.Contains(d));
        return
        [
            .. all.Where(kept.Contains),
            new Diagnostic(
                first.Severity, "too-many-mistakes", $"{all.Count - kept.Count} more mistakes are not told", first.Span,
                "mend the first ones and run it again"),
        ];
    }

    // Those of the plan's own text in its order, then those of used files.
    private static IReadOnlyList<Diagnostic> Ordered(IEnumerable<Diagnostic> diagnostics, SyntaxTree tree)
        => [.. diagnostics.OrderBy(d => ReferenceEquals(d.Span.Source, tree.Source) ? 0 : 1).ThenBy(d => d.Span.Start)];
}
