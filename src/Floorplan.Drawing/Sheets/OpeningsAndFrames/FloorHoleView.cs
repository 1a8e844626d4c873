using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Dimensions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Sizing.Frames;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>The floor from above with the holes of its drains, by running dimensions from the steel datum.</summary>
internal sealed class FloorHoleView : ISheetView
{
    private const double Margin = 12;

    private readonly Plan plan;
    private readonly IReadOnlyList<FloorHole> holes;
    private readonly Envelope extent;
    private readonly DrawingStandard standard;
    private readonly DimensionSet dimensions;

    public FloorHoleView(Plan plan, IReadOnlyList<FloorHole> holes)
    {
        this.plan = plan;
        this.holes = holes;
        extent = plan.Shell.Outside.EnvelopeInternal.Copy();
        standard = DrawingStandard.For(plan.Units);
        dimensions = new DimensionSet(extent, plan.Units, standard);
        Add(Side.South, plan.Shell.Datum.X, extent.MaxX, h => new DimensionStop(h.X + plan.Shell.Datum.X, h.Y + plan.Shell.Datum.Y));
        Add(Side.West, plan.Shell.Datum.Y, extent.MaxY, h => new DimensionStop(h.Y + plan.Shell.Datum.Y, h.X + plan.Shell.Datum.X));
    }

    public string Title => "Floor, seen from above";

    public PaperSpace Measure(double denominator) => new(
        (extent.Width / denominator) + Outside(Side.West, denominator) + Margin,
        (extent.Height / denominator) + Margin + Outside(Side.South, denominator));

    public void Draw(ViewCanvas canvas)
    {
        var transform = new PlanTransform(canvas.Denominator, new PaperPoint(
            canvas.Box.Left + Outside(Side.West, canvas.Denominator) - (extent.MinX / canvas.Denominator),
            canvas.Box.Top + Margin + (extent.MaxY / canvas.Denominator)));
        dimensions.Draw(canvas.Scene, transform);
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
            DrawHole(canvas, transform, hole);
        }

        DatumSymbol.Draw(new SymbolBrush(canvas.Scene, standard, Layers.Marks, "datum", Band.Annotation), transform.ToPaper(plan.Shell.Datum));
    }

    private void DrawHole(ViewCanvas canvas, PlanTransform transform, FloorHole hole)
    {
        string group = "hole:" + hole.Drain.Id;
        var at = transform.ToPaper(hole.Drain.At);
        double radius = Math.Max(0.8, transform.Size((hole.Diameter ?? Length.FromMillimetres(100)) / 2));
        var pen = new Pen(standard.Narrow);
        canvas.Scene.Circle(at, radius, new Pen(standard.Wide), Layers.Opening, group, Band.Wall);
        canvas.Scene.Line(at - new PaperPoint(radius + 1, 0), at + new PaperPoint(radius + 1, 0), pen, Layers.Opening, group);
        canvas.Scene.Line(at - new PaperPoint(0, radius + 1), at + new PaperPoint(0, radius + 1), pen, Layers.Opening, group);
        canvas.Labels.Add(new LabelRequest
        {
            Id = group,
            Lines = Marks.Lines(ServiceLayer.Mark(hole.Drain)),
            KeyText = ServiceLayer.Mark(hole.Drain),
            Target = PaperBox.Around(at, radius * 2, radius * 2),
            Positions = [LabelPosition.AboveRight, LabelPosition.Right, LabelPosition.Left, LabelPosition.Above],
            Priority = LabelPriority.Service,
            CapHeight = standard.NoteHeight,
            Group = group,
        });
    }

    private void Add(Side side, Length datum, double end, Func<FloorHole, DimensionStop> stop) => dimensions.Add(new DimensionRow(
        side, DimensionForm.Running, [new(datum), new(Length.FromMillimetres(end)), .. holes.Select(stop)], $"dimension:floor:{side}"));

    private double Outside(Side side, double denominator) => Math.Max(Margin, dimensions.Depth(side, denominator));
}
