using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;
using Floorplan.Sizing;

namespace Floorplan.Checks.Mending;

/// <summary>A text whose plan some or all rules look at; its facts are worked out once for all of them.</summary>
/// <param name="Facts">Null when the text has mistakes.</param>
internal sealed record TriedText(PlanFacts? Facts)
{
    public static TriedText Of(SourceText source, IPlanFiles files)
    {
        Steps.Take(Steps.ToRead(source.Content));
        var bound = PlanBinder.Bind(SyntaxTree.Parse(source), files);
        return new TriedText(bound is { HasErrors: false, Plan: { } plan }
            ? new PlanFacts(plan, new FloorSpace(plan))
            : null);
    }

    public IReadOnlyList<Finding> Check(IReadOnlyList<Rule> rules) => Facts is null ? [] : Checker.Check(Facts, rules);
}
