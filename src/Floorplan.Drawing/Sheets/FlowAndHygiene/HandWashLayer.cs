using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Views;
using Floorplan.Model;

namespace Floorplan.Drawing.Sheets.FlowAndHygiene;

/// <summary>Makes the hand sinks stand out: a wide outline.</summary>
public sealed class HandWashLayer(Plan plan) : PlanLayer(plan)
{
    public override IEnumerable<LegendEntry> Legend => Plan.Stations.Any(s => s.IsHandSink)
        ? [new LegendEntry("hand-wash sink", (scene, box) =>
        {
            var brush = new SymbolBrush(scene, Standard, Layers.Legend);
            var basin = PaperBox.Around(box.Centre, Math.Min(box.Width, 6), Math.Min(box.Height, 4.6));
            brush.Box(basin, new Pen(Standard.Wide));
            SinkSymbol.Draw(brush, basin, true);
        })]
        : [];

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var sink in Plan.Stations.Where(s => s.IsHandSink))
        {
            canvas.Scene.Rectangle(canvas.Transform.ToPaper(sink.Bounds), new Pen(Standard.Wide), Layers.Fixture, "hand-wash:"
                + sink.Id, Band.Annotation);
        }
    }
}
