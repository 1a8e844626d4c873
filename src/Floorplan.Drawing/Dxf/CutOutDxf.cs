using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Faces;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;
using Floorplan.Sizing;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Dxf;

/// <summary>
/// The holes of one wall, of the floor or of the roof, for a cutting table: closed outlines and a cross at the steel datum, nothing
/// else. ASCII
/// DXF of release 12, one unit is one millimetre. A wall is flat as seen from outside with the datum at 0, 0 and up as y, so that a
/// wall whose datum is at its right lies to the left of it.
/// </summary>
public static class CutOutDxf
{
    /// <summary>Half an arm of the cross, mm.</summary>
    private const double Arm = 50;

    /// <summary>
    /// Files in the order of the walls; what has no holes has none, and neither has a wall with a hole that goes into its frame while the
    /// finding stands.
    /// </summary>
    /// <returns>Names without extension, such as <c>cut-outs-south-wall-mm</c>, and contents.</returns>
    public static IReadOnlyList<(string Name, string Text)> Of(PlanFacts facts, FrameHits hits)
    {
        var withheld = hits.Walls(facts);
        var plan = facts.Plan;
        var files = new List<(string, string)>();
        var cuts = facts.CutOuts;
        var holes = facts.Holes.Where(h => h.Width is not null).ToList();
        foreach (var wall in ShellWall.Of(plan.Shell)
            .Where(w => withheld.All(h => h.Wall != w) && (cuts.Any(c => c.Wall == w) || holes.Exists(h => h.Wall == w))))
        {
            files.Add(
                (
                    $"cut-outs-{wall.NameIn(plan.Shell).Replace(' ', '-')}{DxfWriter.NameEnd}",
                    Wall(plan.Shell, wall, [.. cuts.Where(c => c.Wall == wall)], [.. holes.Where(h => h.Wall == wall)])));
        }

        foreach (var level in holes.Where(h => h.Wall is null).GroupBy(h => h.Surface))
        {
            files.Add(
                (
                    $"cut-outs-{level.Key.ToString().ToLowerInvariant()}{DxfWriter.NameEnd}",
                    Write(pairs => Holes(pairs, level, x => x.Millimetres))));
        }

        return files;
    }

    private static string Wall(Shell shell, ShellWall wall, IReadOnlyList<CutOut> cuts, IReadOnlyList<ServiceHole> holes)
    {
        bool mirrored = new WallFace(shell, wall, FromOutside: true).IsMirrored;
        return Write(pairs =>
        {
            foreach (var cut in cuts)
            {
                var (a, b) = (Along(cut.Along), Along(cut.Right));
                var box = new PaperBox(Math.Min(a, b), cut.Bottom.Millimetres, Math.Max(a, b), cut.Top.Millimetres);
                Outline(pairs, RoundedBox.Outline(box, cut.Radius.Millimetres));
            }

            Holes(pairs, holes, Along);
        });

        double Along(Length length) => mirrored ? -length.Millimetres : length.Millimetres;
    }

    private static void Holes(DxfPairs pairs, IEnumerable<ServiceHole> holes, Func<Length, double> x)
    {
        foreach (var hole in holes)
        {
            var at = new PaperPoint(x(hole.X), hole.Y.Millimetres);
            double width = hole.Width!.Value.Millimetres;
            if (hole.Depth is { } depth)
            {
                Outline(pairs, RoundedBox.Outline(PaperBox.Around(at, width, depth.Millimetres), 0));
            }
            else
            {
                pairs.Add(0, "CIRCLE").Add(8, Layers.Opening).Point(10, at).Add(40, width / 2);
            }
        }
    }

    private static string Write(Action<DxfPairs> holes)
    {
        var pairs = new DxfPairs()
            .Add(0, "SECTION").Add(2, "HEADER").Add(9, "$ACADVER").Add(1, "AC1009").Add(0, "ENDSEC")
            .Add(0, "SECTION").Add(2, "TABLES").Add(0, "TABLE").Add(2, "LAYER").Add(70, 3);
        foreach (string layer in (string[])["0", Layers.Marks, Layers.Opening])
        {
            pairs.Add(0, "LAYER").Add(2, layer).Add(70, 0).Add(62, DxfColour.Ink).Add(6, DxfLineTypes.Continuous);
        }

        pairs.Add(0, "ENDTAB").Add(0, "ENDSEC").Add(0, "SECTION").Add(2, "ENTITIES");
        holes(pairs);
        pairs.Add(0, "LINE").Add(8, Layers.Marks).Point(10, new(-Arm, 0)).Point(11, new(Arm, 0));
        pairs.Add(0, "LINE").Add(8, Layers.Marks).Point(10, new(0, -Arm)).Point(11, new(0, Arm));
        return pairs.Add(0, "ENDSEC").Add(0, "EOF").ToString();
    }

    private static void Outline(DxfPairs pairs, IReadOnlyList<PaperPoint> points)
    {
        pairs.Add(0, "POLYLINE").Add(8, Layers.Opening).Add(66, 1).Point(10, new(0, 0)).Add(70, 1);
        foreach (var point in points)
        {
            pairs.Add(0, "VERTEX").Add(8, Layers.Opening).Point(10, point);
        }

        pairs.Add(0, "SEQEND").Add(8, Layers.Opening);
    }
}
