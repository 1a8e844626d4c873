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
using Xunit;

namespace Floorplan.Tests.Checks.Support;

/// <summary>From text to findings, as a user gets them.</summary>
internal static class CheckedPlan
{
    public static BoundPlan Bind(string text) => PlanBinder.Bind(SyntaxTree.Parse(new SourceText(text, "test.unit")), new NoFiles());

    /// <summary>The plan of a text that must bind without errors.</summary>
    public static Plan Plan(string text)
    {
        var bound = Bind(text);
        var errors = bound.Diagnostics.Where(d => d.Severity == Severity.Error)
            .Select(d => $"{d.Span.Position.Line}: {d.Message} ({d.Help})").ToList();
        Assert.True(errors.Count == 0, string.Join('\n', errors));
        return bound.Plan!;
    }

    public static PlanFacts Facts(Plan plan) => new(plan, new FloorSpace(plan));

    public static IReadOnlyList<Finding> Check(Plan plan) => Checker.Check(Facts(plan));

    public static IReadOnlyList<Finding> Check(string text) => Check(Plan(text));

    public static IReadOnlyList<Finding> Check(string text, string rule) => [.. Check(text).Where(f => f.Rule == rule)];
}
