using Floorplan.Checks.Framework;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Faces;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Views.Findings;
using Floorplan.Language.Quantities;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>
/// Sheet 6: each wall unrolled, seen from outside, the roof and the floor, with their holes from the steel datum, the frames, and the
/// pieces to saw.
/// </summary>
public sealed class OpeningsAndFramesSheet : Sheet
{
    public override int Number => 6;

    public override string Name => "openings-and-frames";

    public override string Title => "Openings and frames";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        var cuts = request.Facts.CutOuts;
        var walls = ShellWall.Of(plan.Shell);
        var holes = request.Facts.Holes;
        var hits = new FrameHits(request.Findings);
        var views = walls.Where(w => cuts.Any(c => c.Wall == w) || holes.Any(h => h.Wall == w))
            .Select(w => (ISheetView)new CutOutFaceView(
                new WallFace(plan.Shell, w, FromOutside: true), [.. cuts.Where(c => c.Wall == w)], [.. holes.Where(h => h.Wall == w)],
                plan.Units, hits))
            .ToList();
        foreach (var level in (HoleSurface[])[HoleSurface.Roof, HoleSurface.Floor])
        {
            ServiceHole[] through = [.. holes.Where(h => h.Surface == level)];
            if (through.Length > 0 || (level == HoleSurface.Floor && views.Count == 0))
            {
                views.Add(new LevelHoleView(plan, level, through));
            }
        }

        var findings = MarkedFinding.NumberOf(request.Findings, RuleGroup.Shell);
        return head with
        {
            Description =
                $"Walls of a {plan.Shell.Name} seen from outside: {SheetHead.Count(cuts.Count, "opening")} and "
                    + $"{SheetHead.Count(holes.Count, "hole")} for pipes, cables, fans and drains, "
                + $"with running dimensions from the {DatumWords.Of(plan.Shell.Kind)}, frames and cut list.",
            Views = views,
            Legend =
            [
                .. FaceSteel.Legend(plan.Shell.Kind, DrawingStandard.For(plan.Units)), .. hits.Legend(DrawingStandard.For(plan.Units)),
            ],
            Tables = [.. Tables(request, cuts, holes)],
            Notes =
            [
                .. hits.Notes, TapeWords.NoteOfRows(Tape.ForSteel(plan.Units)), .. FrameNotes.Of(plan.Shell.Kind, cuts, plan.Units),
                .. Left(walls, cuts, holes, plan.Shell, plan.Units),
            ],
            Findings = [.. findings.Select(f => f.Line)],
            Cautions = Cautions.Building(plan.Shell.Kind),
        };
    }

    private static IEnumerable<KeyTable> Tables(SheetRequest request, IReadOnlyList<CutOut> cuts, IReadOnlyList<ServiceHole> holes)
    {
        var units = request.Plan.Units;
        var tape = Tape.ForSteel(units);
        if (cuts.Count > 0)
        {
            yield return CutOutTables.Steel(request.Plan.Shell, cuts, tape);
            yield return CutOutTables.Clear(request.Plan.Shell, cuts, tape);
        }

        if (holes.Count > 0)
        {
            yield return CutOutTables.Services(request.Plan.Shell, holes, tape);
        }

        if (request.Facts.CutList is { Rows.Count: > 0 } list)
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
    private static IEnumerable<string> Left(
        IReadOnlyList<ShellWall> walls, IReadOnlyList<CutOut> cuts, IReadOnlyList<ServiceHole> holes, Shell shell, UnitSystem units)
    {
        string[] whole =
        [
            .. walls.Where(w => cuts.All(c => c.Wall != w) && holes.All(h => h.Wall != w)).Select(w => w.NameIn(shell)),
            .. holes.Any(h => h.Surface == HoleSurface.Roof) ? Array.Empty<string>() : ["roof"],
        ];
        string none = whole.Length > 0 ? $"No holes in: {string.Join(", ", whole)}." : "";
        string doors = shell.DoorEnd is { } end ? $" The shell's own doors are in the {end.Word()} end." : "";
        yield return (none + doors).TrimStart();
        yield return "Holes for pipes, cables and fans are those that the plan names with `hole`; those of trench drains and of what the "
            + "trades add are not drawn here.";
        if (shell.Kind != ShellKind.Shed && holes.Any(h => h.Wall is null))
        {
            yield return "Cross members under the floor and bows under the roof are not drawn: find them on the real shell, and move a "
                + "hole that would meet one.";
        }

        if (holes.Any(h => h.Surface == HoleSurface.Roof))
        {
            string least = units == UnitSystem.Metric ? "100 mm" : "4 in";
            yield return $"Roof holes get an upstand of at least {least} all round and a flashing, before anybody relies on the "
                + "roof; common practice, no source. Nobody walks on the sheet between the bows.";
        }
    }
}
