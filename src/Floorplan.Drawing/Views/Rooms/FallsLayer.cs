using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Language.Quantities;
using Floorplan.Sizing;
using Floorplan.Sizing.Drainage;

namespace Floorplan.Drawing.Views.Rooms;

/// <summary>Which way the floors fall: arrows towards the drain, and the slope.</summary>
public sealed class FallsLayer(PlanFacts facts) : PlanLayer(facts.Plan)
{
    private const double FromDrain = 4;
    private const double ArrowLength = 9;
    private const int MostArrows = 8;
    private const int LongestName = 60;

    public override IEnumerable<LegendEntry> Legend => facts.Drainage.Values.Any(d => d.Rise is not null)
        ? [new LegendEntry("floor falls this way", (scene, box) =>
            FallArrowSymbol.Draw(
                new SymbolBrush(scene, Standard, Layers.Legend), new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y)))]
        : [];

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var drainage in facts.Drainage.Values.Where(d => d.Rise is not null))
        {
            Draw(canvas, drainage);
        }
    }

    private void Draw(PlanCanvas canvas, RoomDrainage drainage)
    {
        var room = drainage.Room;
        List<PaperPoint> drains = [.. drainage.Takes.Select(d => canvas.Transform.ToPaper(d.At))];
        string group = "falls:" + room.Id;
        var brush = canvas.Brush(Layers.Drainage, group);
        var tails = new List<PaperPoint>();
        foreach (var corner in canvas.Transform.ToPaper(room.Floor.ExteriorRing).Skip(1).Take(MostArrows))
        {
            var drain = drains.MinBy(d => PaperShapes.Length(corner - d));
            if (PaperShapes.Length(corner - drain) < FromDrain + ArrowLength)
            {
                continue;
            }

            var outward = PaperShapes.Towards(drain, corner);
            var tip = drain + PaperShapes.Times(outward, FromDrain);
            var tail = tip + PaperShapes.Times(outward, ArrowLength);
            FallArrowSymbol.Draw(brush, tail, tip);
            tails.Add(tail);
        }

        var at = tails.Count > 0 ? tails[0] : drains[0];
        canvas.Labels.Add(new LabelRequest
        {
            Id = group,
            Lines = [QuantityText.Of(room.Falls!.Slope, Measure.Ratio, Plan.Units)],
            Target = PaperBox.Around(at, 1, 1),
            OtherTargets = [.. tails.Skip(1).Select(t => PaperBox.Around(t, 1, 1))],
            Positions = LabelSides.AllRound,
            MayLead = tails.Count == 0,
            Optional = true,
            ListedUnder = "fall of " + SafeText.Clean(room.Label, LongestName),
            Priority = LabelPriority.Level,
            CapHeight = canvas.Standard.NoteHeight,
            SmallestCapHeight = canvas.Standard.SmallestHeight,
            LeadTo = at,
            Layer = Layers.Drainage,
            Group = group,
        });
    }
}
