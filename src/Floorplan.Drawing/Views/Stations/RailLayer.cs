using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Language.Quantities;
using Floorplan.Model;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views.Stations;

/// <summary>Overhead rails: dashed because they are above the cut, with short strokes for the hooks.</summary>
public sealed class RailLayer(Plan plan) : PlanLayer(plan)
{
    private const int LongestName = 60;

    /// <summary>Wide enough for a name of two or three words, paper mm; own choice.</summary>
    private const double NameWidth = 45;
    private const double HookStroke = 1;
    private const double SmallestHookPitch = 2;

    public override Envelope Extent
    {
        get
        {
            var extent = new Envelope();
            foreach (var rail in Plan.Rails)
            {
                extent.ExpandToInclude(rail.Path.EnvelopeInternal);
            }

            return extent;
        }
    }

    public override IEnumerable<LegendEntry> Legend => Plan.Rails.Count > 0
        ? [new LegendEntry(
            "overhead rail", (scene, box) => scene.Line(new(box.Left, box.Centre.Y), new(box.Right, box.Centre.Y), Pen, Layers.Legend))]
        : [];

    private Pen Pen => new(Standard.Wide, Palette.Black, Dashes.Dashed(Standard.Narrow));

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var rail in Plan.Rails)
        {
            string group = "rail:" + rail.Id;
            var path = canvas.Transform.ToPaper(rail.Path);
            canvas.Scene.Polyline(path, false, Pen, Layers.Rail, group);
            DrawHooks(canvas, rail.Pitch, path, group);
            int longest = Enumerable.Range(0, path.Count - 1).MaxBy(i => PaperShapes.Length(path[i + 1] - path[i]));
            var middle = PaperShapes.Between(path[longest], path[longest + 1], 0.5);
            canvas.Labels.Add(new LabelRequest
            {
                Id = group,
                Lines = [.. TextWrap.Lines(SafeText.Clean(rail.Label, LongestName), NameWidth, Standard.NoteHeight), "rail "
                    + Tape.For(Plan.Units).Sentence(rail.Height) + " over floor"],
                Target = PaperBox.Around(middle, 1, 1),
                Positions = LabelSides.AllRound,
                Priority = LabelPriority.Level,
                CapHeight = Standard.NoteHeight,
                SmallestCapHeight = Standard.SmallestHeight,
                LeadTo = middle,
                Group = group,
            });
        }
    }

    private void DrawHooks(PlanCanvas canvas, Length? pitch, IReadOnlyList<PaperPoint> path, string group)
    {
        double step = pitch is { } real ? canvas.Transform.Size(real) : 0;
        if (step < SmallestHookPitch)
        {
            return;
        }

        for (int i = 0; i + 1 < path.Count; i++)
        {
            double length = PaperShapes.Length(path[i + 1] - path[i]);
            var along = PaperShapes.Towards(path[i], path[i + 1]);
            var across = PaperShapes.Times(PaperShapes.Left(along), HookStroke);
            for (double at = step / 2; at < length; at += step)
            {
                var hook = path[i] + PaperShapes.Times(along, at);
                canvas.Scene.Line(hook - across, hook + across, new Pen(Standard.Narrow), Layers.Rail, group);
            }
        }
    }
}
