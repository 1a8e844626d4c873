using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Services;
using Floorplan.Model.Shells;

namespace Floorplan.Drawing.Sheets.Elevations;

/// <summary>Sheet 7: every outside wall seen from inside, with the heights of benches, sinks, sills, points and openings.</summary>
public sealed class ElevationsSheet : Sheet
{
    public override int Number => 7;

    public override string Name => "elevations";

    public override string Title => "Elevations";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        List<InsideFace> faces = [.. ShellWall.Of(plan.Shell).Select(w => new InsideFace(plan, w))];
        return head with
        {
            Description = $"Inside elevations of {SheetHead.Count(faces.Count, "wall")} with the heights of what stands along them.",
            Views = [.. faces.Select(f => (ISheetView)new ElevationView(f, plan.Units))],
            Legend = [.. Legend(plan, faces)],
            Tables = [.. Tables(plan, faces)],
            Notes =
            [
                "Heights from the finished floor: left of a view openings and ceiling, right of it items and points.",
                TapeWords.NoteOfRows(Tape.For(plan.Units)),
                "Shown is what stands along a wall; what stands free in the room is on sheets 1 and 3."
                    + (faces.Any(f => f.Partitions.Any()) ? " Partitions are seen from their end." : ""),
                .. NotDrawn(plan, faces),
            ],
            Cautions = [Cautions.LocalCode],
        };
    }

    private static IEnumerable<LegendEntry> Legend(Plan plan, IReadOnlyList<InsideFace> faces)
    {
        var standard = DrawingStandard.For(plan.Units);
        SymbolBrush Brush(SceneBuilder scene) => new(scene, standard, Layers.Legend);
        if (faces.Any(f => f.Stations.Any(s => !s.Hung)))
        {
            yield return new LegendEntry("item, see the key", (scene, box) => ElevationSymbols.Item(Brush(scene), box, hung: false));
        }

        if (faces.Any(f => f.Stations.Any(s => s.Hung)))
        {
            yield return new LegendEntry("item that hangs", (scene, box) => ElevationSymbols.Item(Brush(scene), box, hung: true));
        }

        if (faces.Any(f => f.Partitions.Any()))
        {
            double thinnest = plan.Partitions.Min(p => p.Thickness.Millimetres);
            yield return new LegendEntry(
                "partition, cut",
                (scene, box) => ElevationSymbols.Partition(
                    Brush(scene), PaperBox.Around(box.Centre, thinnest / scene.Denominator, box.Height)));
        }

        if (faces.Any(f => f.Points.Any()))
        {
            yield return new LegendEntry(
                "point of water, power or air", (scene, box) => ElevationSymbols.Point(Brush(scene), box.Centre));
        }
    }

    private static IEnumerable<string> NotDrawn(Plan plan, IReadOnlyList<InsideFace> faces)
    {
        string[] low = [.. faces.SelectMany(f => f.PointsWithoutHeight).Select(p => p.Id).Distinct()];
        if (low.Length > 0)
        {
            yield return $"Not drawn, because the plan does not say how high: {string.Join(", ", low)}. Add a height in the plan.";
        }

        string[] inner =
            [.. plan.Services.Where(s => s.Wall is not null && s is not (Hose or Drain) && !faces.Any(f => f.Has(s))).Select(s => s.Id)];
        if (inner.Length > 0)
        {
            yield return $"On a partition, so in none of these views: {string.Join(", ", inner)}; see sheets 4 and 5.";
        }
    }

    private static IEnumerable<KeyTable> Tables(Plan plan, IReadOnlyList<InsideFace> faces)
    {
        var tape = Tape.For(plan.Units);
        List<IReadOnlyList<Cell>> rows =
        [
            .. faces.Where(f => f.Stations.Any()).SelectMany(f => f.Stations.OrderBy(s => s.Item).Select(s => (IReadOnlyList<Cell>)
            [
                FormattableString.Invariant($"{s.Item}"),
                s.Caption,
                tape.Cell(s.Bottom),
                tape.Cell(s.Top),
                s.Workers.Count == 0 ? "" : tape.Cell(s.WorkHeight),
            ]).Prepend([f.Title])),
        ];
        if (rows.Count > 0)
        {
            yield return new KeyTable("Items along the walls", ["No", "Item", "Under", "Top", "Work at"], rows);
        }
    }
}
