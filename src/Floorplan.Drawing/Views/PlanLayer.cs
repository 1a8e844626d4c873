using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Model;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views;

/// <summary>One kind of thing on a plan view. Each sheet picks the layers that it shows, in the order they are drawn.</summary>
public abstract class PlanLayer(Plan plan)
{
    protected Plan Plan { get; } = plan;

    protected DrawingStandard Standard { get; } = DrawingStandard.For(plan.Units);

    /// <summary>Plan millimetres that it takes; may reach outside the shell. Empty when it never does.</summary>
    public virtual Envelope Extent => new();

    /// <summary>Samples of what this layer really draws.</summary>
    public virtual IEnumerable<LegendEntry> Legend => [];

    public abstract void Draw(PlanCanvas canvas);
}
