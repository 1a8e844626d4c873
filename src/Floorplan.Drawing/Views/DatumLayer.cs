using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Model;

namespace Floorplan.Drawing.Views;

/// <summary>The steel datum that the coordinate tables count from.</summary>
public sealed class DatumLayer(Plan plan) : PlanLayer(plan)
{
    public override IEnumerable<LegendEntry> Legend =>
        [new LegendEntry(
            $"{DatumWords.Of(Plan.Shell.Kind)}: outside, south-west", (scene, box)
                => DatumSymbol.Draw(new SymbolBrush(scene, Standard, Layers.Legend), box.Centre))];

    public override void Draw(PlanCanvas canvas)
    {
        var at = canvas.Transform.ToPaper(Plan.Shell.Datum);
        DatumSymbol.Draw(canvas.Brush(Layers.Marks, "datum", Band.Annotation), at);
        canvas.Labels.Add(new LabelRequest
        {
            Id = "datum",
            Lines = ["DATUM 0, 0"],
            Target = PaperBox.Around(at, 4, 4),
            Positions = [LabelPosition.BelowLeft, LabelPosition.Below, LabelPosition.Left, LabelPosition.BelowRight],
            Priority = LabelPriority.Ends,
            CapHeight = Standard.NoteHeight,
            SmallestCapHeight = Standard.SmallestHeight,
            LeadTo = at,
            Group = "datum",
        });
    }
}
