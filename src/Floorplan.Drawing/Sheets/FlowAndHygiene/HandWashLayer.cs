using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Views;
using Floorplan.Model;

namespace Floorplan.Drawing.Sheets.FlowAndHygiene;

/// <summary>Makes the hand sinks stand out.</summary>
public sealed class HandWashLayer(Plan plan) : PlanLayer(plan)
{
    private const double Around = 0.8;

    public override IEnumerable<LegendEntry> Legend => Plan.Stations.Any(s => s.IsHandSink)
        ? [new LegendEntry("hand-wash sink", (scene, box) =>
        {
            var brush = new SymbolBrush(scene, Standard, Layers.Legend);
            var basin = PaperBox.Around(box.Centre, Math.Min(box.Width, 6), Math.Min(box.Height, 5));
            brush.Box(basin, brush.Symbol);
            SinkSymbol.Draw(brush, basin, true);
        })]
        : [];

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var sink in Plan.Stations.Where(s => s.IsHandSink))
        {
            string group = "hand-wash:" + sink.Id;
            var box = canvas.Transform.ToPaper(sink.Bounds).Grown(Around);
            canvas.Scene.Rectangle(box, new Pen(Standard.Wide), Layers.Fixture, group, Band.Annotation);
            canvas.Labels.Add(new LabelRequest
            {
                Id = group,
                Lines = ["hand-wash"],
                Target = box,
                Positions = Sides.AllRound,
                Priority = LabelPriority.Service,
                CapHeight = Standard.NoteHeight,
                SmallestCapHeight = Standard.SmallestHeight,
                LeadTo = box.Centre,
                Layer = Layers.Fixture,
                Group = group,
            });
        }
    }
}
