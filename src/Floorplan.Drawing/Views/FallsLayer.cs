using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Views;

/// <summary>Which way the floors fall: arrows towards the drain, and the slope.</summary>
public sealed class FallsLayer(Plan plan) : PlanLayer(plan)
{
    private const double FromDrain = 4;
    private const double ArrowLength = 9;
    private const int MostArrows = 8;

    public override IEnumerable<LegendEntry> Legend => Plan.Rooms.Any(r => DrainOf(r) is not null)
        ? [new LegendEntry("floor falls this way", (scene, box) =>
            FallArrowSymbol.Draw(new SymbolBrush(scene, Standard, Layers.Legend), new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y)))]
        : [];

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var room in Plan.Rooms)
        {
            if (DrainOf(room) is { } drain)
            {
                Draw(canvas, room, canvas.Transform.ToPaper(drain.At));
            }
        }
    }

    private Drain? DrainOf(Room room) =>
        room.Falls is { DrainId: { } id } ? Plan.Services.OfType<Drain>().FirstOrDefault(s => s.Id == id) : null;

    private void Draw(PlanCanvas canvas, Room room, PaperPoint drain)
    {
        string group = "falls:" + room.Id;
        var brush = canvas.Brush(Layers.Drainage, group);
        PaperPoint? labelled = null;
        foreach (var corner in canvas.Transform.ToPaper(room.Floor.ExteriorRing).Skip(1).Take(MostArrows))
        {
            if (PaperShapes.Length(corner - drain) < FromDrain + ArrowLength)
            {
                continue;
            }

            var outward = PaperShapes.Towards(drain, corner);
            var tip = drain + PaperShapes.Times(outward, FromDrain);
            var tail = tip + PaperShapes.Times(outward, ArrowLength);
            FallArrowSymbol.Draw(brush, tail, tip);
            labelled ??= tail;
        }

        var at = labelled ?? drain;
        canvas.Labels.Add(new LabelRequest
        {
            Id = group,
            Lines = [QuantityText.Of(room.Falls!.Slope, Measure.Ratio, Plan.Units)],
            Target = PaperBox.Around(at, 1, 1),
            Positions = LabelSides.AllRound,
            Priority = LabelPriority.Level,
            CapHeight = canvas.Standard.NoteHeight,
            SmallestCapHeight = canvas.Standard.SmallestHeight,
            LeadTo = at,
            Layer = Layers.Drainage,
            Group = group,
        });
    }
}
