using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Dimensions;
using Floorplan.Drawing.Faces;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Sizing.Frames;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>
/// The floor or the roof from above with its holes for drains, pipes and fans, by running dimensions from the steel datum to their
/// middles.
/// </summary>
internal sealed class LevelHoleView : ISheetView
{
    private const double Margin = 12;

    private readonly Plan plan;
    private readonly HoleSurface surface;
    private readonly IReadOnlyList<ServiceHole> holes;
    private readonly Envelope extent;
    private readonly DrawingStandard standard;
    private readonly DimensionSet dimensions;

    public LevelHoleView(Plan plan, HoleSurface surface, IReadOnlyList<ServiceHole> holes)
    {
        this.surface = surface;
        this.plan = plan;
        this.holes = holes;
        extent = plan.Shell.Outside.EnvelopeInternal.Copy();
        standard = DrawingStandard.For(plan.Units);
        dimensions = new DimensionSet(extent, Tape.ForSteel(plan.Units), standard);
        Add(Side.South, plan.Shell.Datum.X, extent.MaxX, h => new DimensionStop(h.X + plan.Shell.Datum.X, h.Y + plan.Shell.Datum.Y));
        Add(Side.West, plan.Shell.Datum.Y, extent.MaxY, h => new DimensionStop(h.Y + plan.Shell.Datum.Y, h.X + plan.Shell.Datum.X));
    }

    public string Title => (surface == HoleSurface.Roof ? "Roof" : "Floor") + ", seen from above";

    public double Density => 0.3;

    public PaperSpace Measure(double denominator) => new(
        (extent.Width / denominator) + Outside(Side.West, denominator) + Outside(Side.East, denominator),
        (extent.Height / denominator) + Outside(Side.North, denominator) + Outside(Side.South, denominator));

    public void Draw(ViewCanvas canvas)
    {
        var transform = new PlanTransform(canvas.Denominator, new PaperPoint(
            canvas.Box.Left + Outside(Side.West, canvas.Denominator) - (extent.MinX / canvas.Denominator),
            canvas.Box.Top + Outside(Side.North, canvas.Denominator) + (extent.MaxY / canvas.Denominator)));
        dimensions.Draw(canvas.Scene, transform);
        FaceSteel.DrawRim(canvas.Scene, transform, plan.Shell, holes, standard);
        foreach (var ring in transform.Rings(plan.Shell.Outside))
        {
            canvas.Scene.Polyline(ring, true, new Pen(standard.Wide), Layers.Wall, "wall", Band.Wall);
        }

        foreach (var ring in transform.Rings(plan.Shell.Finished))
        {
            canvas.Scene.Polyline(ring, true, new Pen(standard.Narrow), Layers.Wall, "wall:finished");
        }

        foreach (var hole in holes)
        {
            HoleOutline.Draw(canvas, transform, transform.ToPaper(hole.Point.At), hole, standard);
        }

        var datum = transform.ToPaper(plan.Shell.Datum);
        canvas.Scene.SetDatum(datum);
        DatumSymbol.Draw(new SymbolBrush(canvas.Scene, standard, Layers.Marks, "datum", Band.Annotation), datum);
    }

    private void Add(Side side, Length datum, double end, Func<ServiceHole, DimensionStop> stop) => dimensions.Add(new DimensionRow(
        side, DimensionForm.Running, [new(datum), new(Length.FromMillimetres(end)), .. holes.Select(stop)],
        $"dimension:{surface.ToString().ToLowerInvariant()}:{side}"));

    private double Outside(Side side, double denominator) => Math.Max(Margin, dimensions.Depth(side, denominator));
}
