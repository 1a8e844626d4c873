using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Svg;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Space;
using Floorplan.Sizing;

namespace Floorplan.Benchmarks;

/// <summary>The stages one by one, as the commands run them.</summary>
public static class Pipeline
{
    public static SyntaxTree Parse(string text) => SyntaxTree.Parse(new SourceText(text, "bench.unit"));

    public static Plan Bind(SyntaxTree tree)
    {
        var bound = PlanBinder.Bind(tree, new NoFiles());
        var error = bound.Diagnostics.FirstOrDefault(d => d.Severity == Severity.Error);
        return error is null ? bound.Plan! : throw new InvalidOperationException($"{error.Span.Position}: {error.Message}");
    }

    /// <summary>Free floor, routes and meetings, which checks and sheets share.</summary>
    public static PlanFacts Facts(Plan plan)
    {
        var space = new FloorSpace(plan);
        _ = space.LegRoutes;
        _ = space.Meetings;
        return new PlanFacts(plan, space);
    }

    public static IReadOnlyList<Finding> Check(PlanFacts facts) => Checker.Check(facts);

    public static IReadOnlyList<SheetScene> Draw(PlanFacts facts, IReadOnlyList<Finding> findings)
        => SheetSet.Draw(new SheetRequest(facts, findings));

    public static int Write(IReadOnlyList<SheetScene> sheets) => sheets.AsParallel().Sum(s => SvgWriter.Write(s).Length);

    /// <summary>From text to the SVG of all sheets; returns their length, so that nothing is left out.</summary>
    public static int All(string text)
    {
        var facts = Facts(Bind(Parse(text)));
        return Write(Draw(facts, Check(facts)));
    }
}
