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

namespace Floorplan.Benchmarks;

/// <summary>The stages one by one, as the commands run them.</summary>
public static class Pipeline
{
    public static SyntaxTree Parse(string text) => SyntaxTree.Parse(new SourceText(text, "bench.plan"));

    public static Plan Bind(SyntaxTree tree)
    {
        var bound = PlanBinder.Bind(tree, new NoFiles());
        var error = bound.Diagnostics.FirstOrDefault(d => d.Severity == Severity.Error);
        return error is null ? bound.Plan! : throw new InvalidOperationException($"{error.Span.Position}: {error.Message}");
    }

    /// <summary>Free floor, routes and meetings, which checks and sheets share.</summary>
    public static FloorSpace Space(Plan plan)
    {
        var space = new FloorSpace(plan);
        _ = space.LegRoutes;
        _ = space.Meetings;
        return space;
    }

    public static IReadOnlyList<Finding> Check(Plan plan, IFloorSpace space) => Checker.Check(plan, space);

    public static IReadOnlyList<SheetScene> Draw(Plan plan, IFloorSpace space, IReadOnlyList<Finding> findings)
        => SheetSet.Draw(new SheetRequest(plan, space, findings));

    public static int Write(IReadOnlyList<SheetScene> sheets) => sheets.AsParallel().Sum(s => SvgWriter.Write(s).Length);

    /// <summary>From text to the SVG of all sheets; returns their length, so that nothing is left out.</summary>
    public static int All(string text)
    {
        var plan = Bind(Parse(text));
        var space = Space(plan);
        return Write(Draw(plan, space, Check(plan, space)));
    }
}
