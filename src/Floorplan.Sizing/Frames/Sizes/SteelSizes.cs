using Floorplan.Language.Quantities;
using Floorplan.Model.Shapes;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Frames.Sizes;

/// <summary>What openings take out of a container's walls, and the steel of their frames. It approves nothing.</summary>
internal static class SteelSizes
{
    /// <summary>Above this a wall is said to need a design; as <c>wall-cut-too-much</c> takes it.</summary>
    private const double Half = 0.5;

    /// <summary>Null where no wall of a container is cut and nothing is framed.</summary>
    public static SizedSubject? Of(PlanFacts facts)
    {
        var work = new Workings(facts.Plan.Units);
        List<(WallCut Wall, WallLeft Left)> walls = [];
        foreach (var wall in facts.WallCuts)
        {
            work.Add(wall.Length);
            work.Add(wall.Share);
            walls.Add((wall, WallLeft.Of(wall, work)));
        }

        var totals = facts.CutList.Totals;
        if (walls.Count == 0 && totals.Count == 0)
        {
            return null;
        }

        var rows = new List<SizeRow>();
        if (walls.Count > 0)
        {
            var (worst, left) = walls.MaxBy(w => w.Wall.Share.Value);
            rows.Add(SizeRow.Of(
                $"cut out of the {worst.Wall.Side.Word()} wall", worst.Share,
                $"{worst.Length.Text} of its length; at the worst level {left.WorstShare.Text}"));
            rows.Add(SizeRow.Of("left of it", left.Length, $"the narrowest piece {left.Narrowest.Text}"));
        }

        foreach (var total in totals)
        {
            work.Add(total.Kilograms);
        }

        rows.AddRange(totals.Take(2).Select(t => SizeRow.Of(
            $"frames of {t.Section.Name(work.Units)}", t.Kilograms,
            $"{t.Pieces} pieces, {QuantityText.Distance(t.Length.Millimetres, work.Units)}")));
        return new SizedSubject("Steel", rows)
        {
            Figures = work.Figures,
            Tables = walls.Count == 0 ? [] : [Table(walls)],
            Cautions = [.. Cautions(walls)],
        };
    }

    private static SizeTable Table(IReadOnlyList<(WallCut Wall, WallLeft Left)> walls) => new(
        "Walls and their holes", ["Wall", "Holes", "Cut out", "Of its length", "At the worst level", "Left", "Narrowest piece"],
        [
            .. walls.Select(w => (IReadOnlyList<string>)
            [
                w.Wall.Wall.Side.Word(), string.Join(", ", w.Wall.Cuts.Select(c => c.Opening.Id)), w.Wall.Length.Text, w.Wall.Share.Text,
                w.Left.WorstShare.Text, w.Left.Length.Text, w.Left.Narrowest.Text,
            ]),
        ],
        [
            .. walls.SelectMany(w => (IEnumerable<Figure>)
                [w.Wall.Length, w.Wall.Share, w.Left.WorstShare, w.Left.Length, w.Left.Narrowest]),
        ]);

    private static IEnumerable<string> Cautions(IReadOnlyList<(WallCut Wall, WallLeft Left)> walls)
    {
        yield return "Structural cut: nothing here says that a box bears what is cut out of it. Have an engineer confirm each opening and "
            + "its frame before steel is cut: the posts and header that take the place of the wall, the welds, the roof with its load of "
            + "snow, and whether the box may be lifted or stacked afterwards.";
        if (walls.Where(w => w.Wall.Share.Value > Half).Select(w => w.Wall.Wall.Side.Word()).ToList() is { Count: > 0 } weak)
        {
            yield return $"More than half of the {string.Join(" and the ", weak)} wall is cut out: it holds the box up no longer. An "
                + "engineer designs the steel that does. Do not lift or stack the box until that is in.";
        }
    }
}
