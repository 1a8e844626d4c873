using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Model;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views;

/// <summary>The cut walls: steel shell, lining and partitions, with the openings that the plan cuts taken out.</summary>
public sealed class WallLayer(Plan plan) : PlanLayer(plan)
{
    public override IEnumerable<LegendEntry> Legend
    {
        get
        {
            yield return Sample("shell, cut", Thickness(Plan.Shell.Outside, Plan.Shell.BareInside), Palette.Wall);
            if (Plan.Shell.WallLining > default(Language.Quantities.Length))
            {
                yield return Sample("lining, cut", Plan.Shell.WallLining.Millimetres, Palette.LightGrey);
            }

            if (Plan.Partitions.Count > 0)
            {
                yield return Sample("partition, cut", Plan.Partitions.Min(p => p.Thickness.Millimetres), Palette.Grey);
            }
        }
    }

    public override void Draw(PlanCanvas canvas)
    {
        var shell = Plan.Shell;
        var holes = Overlays.Sum(Plan.Openings.Where(o => PlanCut.Cuts(o.Sill, o.Sill + o.Height)).Select(o => o.Reveal));
        DrawCut(
            canvas, Overlays.Less(Overlays.Less(shell.Outside, shell.BareInside), holes), Thickness(shell.Outside, shell.BareInside),
            Palette.Wall, "wall:shell");
        DrawCut(
            canvas, Overlays.Less(Overlays.Less(shell.BareInside, shell.Finished), holes), shell.WallLining.Millimetres, Palette.LightGrey,
            "wall:lining");

        var tall = Plan.Partitions.Where(p => p.Height > PlanCut.Height).ToList();
        if (tall.Count > 0)
        {
            DrawCut(
                canvas, Overlays.Less(Overlays.Sum(tall.Select(p => p.Outline)), holes), tall.Min(p => p.Thickness.Millimetres),
                Palette.Grey, "wall:partitions");
        }

        // A partition that ends below the cut is seen from above: outline only.
        var low = Overlays.Less(Overlays.Sum(Plan.Partitions.Where(p => p.Height <= PlanCut.Height).Select(p => p.Outline)), holes);
        foreach (var ring in canvas.Transform.Rings(low))
        {
            canvas.Scene.Polyline(ring, true, new Pen(Standard.Narrow), Layers.Wall, "wall:low", Band.Wall);
        }
    }

    private void DrawCut(PlanCanvas canvas, Geometry walls, double thickness, string fill, string group)
    {
        var rings = canvas.Transform.Rings(walls);
        if (rings.Count == 0)
        {
            return;
        }

        bool hatched = IsHatched(thickness, canvas.Transform.Denominator);
        if (hatched)
        {
            canvas.Scene.Hatch(rings, HatchStyle.Wall, new Pen(Standard.Fine), Layers.WallHatch, group);
        }
        else
        {
            canvas.Scene.Fill(rings, fill, Layers.Wall, group, Band.Wall);
        }

        // Round a filled wall a wide outline would swallow the fill.
        var pen = new Pen(hatched ? Standard.Wide : Standard.Narrow);
        foreach (var ring in rings)
        {
            canvas.Scene.Polyline(ring, true, pen, Layers.Wall, group, Band.Wall);
        }
    }

    private static double Thickness(Polygon outside, Polygon inside)
    {
        var outer = outside.EnvelopeInternal;
        var inner = inside.EnvelopeInternal;
        return Math.Max(1, Math.Min(
            Math.Min(inner.MinX - outer.MinX, outer.MaxX - inner.MaxX),
            Math.Min(inner.MinY - outer.MinY, outer.MaxY - inner.MaxY)));
    }

    private bool IsHatched(double thickness, double denominator) => thickness / denominator >= Standard.FilledWallBelow;

    /// <summary>Drawn as the walls are at the scale of the sheet.</summary>
    private LegendEntry Sample(string text, double thickness, string fill) => new(text, (scene, box) =>
    {
        bool hatched = IsHatched(thickness, scene.Denominator);
        var piece = PaperBox.Around(box.Centre, box.Width, Math.Min(hatched ? 2.6 : 1.6, box.Height));
        var brush = new SymbolBrush(scene, Standard, Layers.Legend);
        if (hatched)
        {
            scene.Hatch(piece, HatchStyle.Wall, new Pen(Standard.Fine), Layers.Legend);
            brush.Box(piece, new Pen(Standard.Wide));
            return;
        }

        brush.Fill(piece, fill);
        brush.Box(piece, brush.Narrow);
    });
}
