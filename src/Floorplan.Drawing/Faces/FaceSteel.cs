using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Frames;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Faces;

/// <summary>
/// The steel of an unrolled wall: outline, posts, rails, headers, castings, and the corrugations of a container's sheet between them.
/// </summary>
internal static class FaceSteel
{
    /// <summary>
    /// Pitch of side corrugations, outside edge to outside edge, mm; typical builder's drawing, from memory. Drawn for orientation:
    /// corrugations of a real box are found on the box.
    /// </summary>
    private const double Corrugation = 278;

    /// <summary>Closer lines than this on paper would blacken the wall.</summary>
    private const double ClosestLines = 2;

    private static readonly HatchStyle NoCut = new(45, 2);

    public static IEnumerable<LegendEntry> Legend(ShellKind kind, DrawingStandard standard)
    {
        string parts = kind switch
        {
            ShellKind.Container => "post, rail, header, sill, casting",
            ShellKind.Trailer => "post, rail, wheel arch",
            _ => "post, plate",
        };
        yield return new LegendEntry(parts + ": do not cut", (scene, box) =>
        {
            var piece = PaperBox.Around(box.Centre, box.Width, 3);
            scene.Hatch(piece, NoCut, new Pen(standard.Fine), Layers.Legend);
            scene.Rectangle(piece, new Pen(standard.Narrow), Layers.Legend);
        });
        if (kind == ShellKind.Container)
        {
            yield return new LegendEntry("corrugated sheet, for orientation", (scene, box) =>
            {
                var piece = PaperBox.Around(box.Centre, box.Width, 3);
                scene.Hatch(piece, new HatchStyle(90, ClosestLines), new Pen(standard.Fine, Palette.HatchGrey), Layers.Legend);
                scene.Rectangle(piece, new Pen(standard.Narrow, Palette.Grey), Layers.Legend);
            });
        }

        yield return new LegendEntry("finished floor", (scene, box) =>
            scene.Line(
                new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y),
                new Pen(standard.Narrow, Palette.Black, Dashes.LongDashDot(standard.Narrow)), Layers.Legend));
    }

    public static void Draw(SceneBuilder scene, PlanTransform transform, WallFace face, IReadOnlyList<Box> holes, DrawingStandard standard)
    {
        var all = Shape.Factory.ToGeometry(face.Extent);
        var holed = Overlays.Sum(holes.Select(h => h.ToPolygon()));
        var members = Overlays.Less(Overlays.Common(Overlays.Sum(face.Members.Select(m => face.Rectangle(m).ToPolygon())), all), holed);
        var rings = transform.Rings(members);
        if (rings.Count > 0)
        {
            scene.Hatch(rings, NoCut, new Pen(standard.Fine), Layers.Frame, "frame");
            foreach (var ring in rings)
            {
                scene.Polyline(ring, true, new Pen(standard.Narrow), Layers.Frame, "frame");
            }
        }

        double pitch = transform.Size(Corrugation / 2);
        if (face.Shell.Kind == ShellKind.Container && pitch >= ClosestLines)
        {
            var sheet = transform.Rings(Overlays.Less(Overlays.Less(all, members), holed));
            scene.Hatch(sheet, new HatchStyle(90, pitch), new Pen(standard.Fine, Palette.HatchGrey), Layers.WallHatch, "corrugations");
        }

        scene.Rectangle(transform.ToPaper(face.Extent), new Pen(standard.Wide), Layers.Wall, "wall", Band.Wall);
    }

    /// <summary>
    /// From above, what carries the floor and the roof along their edges: rails, posts and castings as deep as the bare walls. Cross
    /// members
    /// and roof bows lie between them at places that only the box shows.
    /// </summary>
    public static void DrawRim(
        SceneBuilder scene, PlanTransform transform, Shell shell, IReadOnlyList<ServiceHole> holes, DrawingStandard standard)
    {
        if (shell.Kind == ShellKind.Shed)
        {
            return;
        }

        var holed = Overlays.Sum(holes.Select(h => (Geometry)Around(h)));
        scene.Hatch(
            transform.Rings(Overlays.Less(Overlays.Less(shell.Outside, shell.BareInside), holed)), NoCut, new Pen(standard.Fine),
            Layers.Frame, "frame");
        foreach (var ring in transform.Rings(shell.BareInside))
        {
            scene.Polyline(ring, true, new Pen(standard.Narrow), Layers.Frame, "frame");
        }
    }

    private static Polygon Around(ServiceHole hole)
    {
        var (across, up) = ((hole.Width ?? default) / 2, (hole.Depth ?? hole.Width ?? default) / 2);
        return new Box(hole.Point.At.X - across, hole.Point.At.Y - up, hole.Point.At.X + across, hole.Point.At.Y + up).ToPolygon();
    }

    /// <summary>The finished floor across the wall, as a line of levels.</summary>
    public static void DrawFloorLine(ViewCanvas canvas, PlanTransform transform, WallFace face, DrawingStandard standard)
    {
        double level = face.V(default).Millimetres;
        if (level < 1)
        {
            return;
        }

        var from = transform.ToPaper(0, level);
        var to = transform.ToPaper(face.Width.Millimetres, level);
        canvas.Scene.Line(
            from, to, new Pen(standard.Narrow, Palette.Black, Dashes.LongDashDot(standard.Narrow)), Layers.Marks, "finished floor",
            Band.Annotation);
    }
}
