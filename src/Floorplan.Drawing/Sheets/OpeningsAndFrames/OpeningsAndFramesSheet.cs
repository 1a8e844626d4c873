using Floorplan.Checks.Framework;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Faces;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>Sheet 6: each wall unrolled, seen from outside, with its holes from the steel datum, their frames, and the pieces to saw.</summary>
public sealed class OpeningsAndFramesSheet : Sheet
{
    public override int Number => 6;

    public override string Name => "openings-and-frames";

    public override string Title => "Openings and frames";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        var cuts = CutOuts.Of(plan);
        var walls = ShellWall.Of(plan.Shell);
        var holes = FloorHole.Of(plan);
        var views = walls.Where(w => cuts.Any(c => c.Wall == w))
            .Select(w => (ISheetView)new CutOutFaceView(new WallFace(plan.Shell, w, FromOutside: true), [.. cuts.Where(c => c.Wall == w)], plan.Units))
            .ToList();
        if (views.Count == 0 || holes.Count > 0)
        {
            views.Add(new FloorHoleView(plan, holes));
        }

        var findings = MarkedFinding.NumberOf(request.Findings, RuleGroup.Shell);
        return head with
        {
            Description = $"Walls of a {plan.Shell.Name} seen from outside: {SheetHead.Count(cuts.Count, "hole")} in the walls and {SheetHead.Count(holes.Count, "hole")} in the floor, "
                + "with running dimensions from the steel datum, frames and cut list.",
            Views = views,
            Legend = [.. FaceSteel.Legend(plan.Shell.Kind, DrawingStandard.For(plan.Units))],
            Tables = [.. Tables(request, cuts, holes)],
            Notes = [.. FrameNotes.Of(plan.Shell.Kind, cuts, plan.Units), .. Left(walls, cuts, plan.Shell)],
            Findings = [.. findings.Select(f => f.Line)],
            Cautions = [Cautions.Cutting(plan.Shell.Kind), .. plan.Shell.Kind == ShellKind.Shed ? Array.Empty<string>() : [Cautions.ClosedBox], Cautions.LocalCode],
        };
    }

    private static IEnumerable<KeyTable> Tables(SheetRequest request, IReadOnlyList<CutOut> cuts, IReadOnlyList<FloorHole> holes)
    {
        var units = request.Plan.Units;
        if (cuts.Count > 0)
        {
            yield return CutOutTables.Steel(request.Plan.Shell, cuts, units);
            yield return CutOutTables.Clear(request.Plan.Shell, cuts, units);
        }

        if (holes.Count > 0)
        {
            yield return CutOutTables.Floor(holes, units);
        }

        if (CutList.Of(cuts) is { Rows.Count: > 0 } list)
        {
            yield return CutListTable.Of(list, units);
        }

        foreach (var stock in request.Stock.Where(s => s.Bars.Count > 0))
        {
            yield return StockTable.Of(stock, units);
        }

        if (cuts.Count > 0)
        {
            yield return FrameNotes.OrderOfWork(request.Plan.Shell.Kind);
        }
    }

    /// <summary>What is not drawn, so that nobody looks for it.</summary>
    private static IEnumerable<string> Left(IReadOnlyList<ShellWall> walls, IReadOnlyList<CutOut> cuts, Shell shell)
    {
        string[] whole = [.. walls.Where(w => cuts.All(c => c.Wall != w)).Select(w => w.NameIn(shell)), "roof"];
        yield return $"No holes in: {string.Join(", ", whole)}.{(shell.DoorEnd is { } end ? $" The shell's own doors are in the {end.Word()} end." : "")}";
        yield return "Holes for pipes, cables and trench drains are not drawn here: see sheets 4 and 5.";
    }
}
