using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Dimensions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views;

/// <summary>The plan of the unit, seen from above: its layers, and its dimension rows outside.</summary>
public sealed class PlanView : ISheetView
{
    /// <summary>Paper kept free round the view for labels and leaders, mm; own choice.</summary>
    private const double Margin = 14;

    private readonly Plan plan;
    private readonly IReadOnlyList<PlanLayer> layers;
    private readonly Envelope extent;
    private readonly DimensionSet dimensions;

    /// <param name="dimension">Adds the rows outside the view.</param>
    public PlanView(
        string title,
        Plan plan,
        IReadOnlyList<PlanLayer> layers,
        Action<DimensionSet>? dimension = null)
    {
        Title = title;
        this.plan = plan;
        this.layers = layers;
        extent = plan.Shell.Outside.EnvelopeInternal.Copy();
        foreach (var layer in layers)
        {
            extent.ExpandToInclude(layer.Extent);
        }

        dimensions = new DimensionSet(extent, Tape.For(plan.Units), DrawingStandard.For(plan.Units));
        dimension?.Invoke(dimensions);
    }

    public string Title { get; }

    public IEnumerable<LegendEntry> Legend => layers.SelectMany(l => l.Legend);

    public PaperSpace Measure(double denominator) => new(
        (extent.Width / denominator) + Outside(Side.West, denominator) + Outside(Side.East, denominator),
        (extent.Height / denominator) + Outside(Side.North, denominator) + Outside(Side.South, denominator));

    public void Draw(ViewCanvas canvas)
    {
        var transform = new PlanTransform(canvas.Denominator, new PaperPoint(
            canvas.Box.Left + Outside(Side.West, canvas.Denominator) - (extent.MinX / canvas.Denominator),
            canvas.Box.Top + Outside(Side.North, canvas.Denominator) + (extent.MaxY / canvas.Denominator)));
        var plan = new PlanCanvas(this.plan, canvas, transform);
        canvas.Scene.SetDatum(transform.ToPaper(this.plan.Shell.Datum));
        dimensions.Draw(canvas.Scene, transform);
        foreach (var room in this.plan.Rooms.Where(r => !r.Floor.IsEmpty))
        {
            canvas.Labels.Add(new LabelArea("room:" + room.Id, LabelAreaKind.Room, transform.Rings(room.Floor)));
        }

        foreach (var layer in layers)
        {
            layer.Draw(plan);
        }
    }

    private double Outside(Side side, double denominator) => Math.Max(Margin, dimensions.Depth(side, denominator));
}
