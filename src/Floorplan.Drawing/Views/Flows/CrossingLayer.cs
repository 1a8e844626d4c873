using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Model;

namespace Floorplan.Drawing.Views.Flows;

/// <summary>Marks where streams cross or run together.</summary>
public sealed class CrossingLayer(Plan plan, IReadOnlyList<StreamCrossing> crossings) : PlanLayer(plan)
{
    public override IEnumerable<LegendEntry> Legend => crossings.Count > 0
        ? [new LegendEntry(
            "streams meet here", (scene, box) => CrossingMarkSymbol.Draw(new SymbolBrush(scene, Standard, Layers.Legend), box.Centre))]
        : [];

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var crossing in crossings)
        {
            string group = "crossing:" + crossing.Mark;
            var at = canvas.Transform.ToPaper(crossing.At);
            CrossingMarkSymbol.Draw(canvas.Brush(Layers.Marks, group, Band.Annotation), at);
            canvas.Labels.Add(new LabelRequest
            {
                Id = group,
                Lines = [crossing.Mark],
                Target = PaperBox.Around(at, 2 * CrossingMarkSymbol.HalfSize, 2 * CrossingMarkSymbol.HalfSize),
                Positions = LabelSides.AllRound,
                Priority = LabelPriority.Crossing,
                CapHeight = Standard.NoteHeight,
                SmallestCapHeight = Standard.TagHeight,
                LeadTo = at,
                Layer = Layers.Marks,
                Group = group,
            });
        }
    }
}
