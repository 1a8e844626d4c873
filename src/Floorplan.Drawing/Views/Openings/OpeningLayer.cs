using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Model;
using Floorplan.Model.Openings;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views.Openings;

/// <summary>Doors with their swings, hatches, windows, chutes, vents and cargo doors, each with its mark.</summary>
public sealed class OpeningLayer(Plan plan) : PlanLayer(plan)
{
    /// <summary>The shell's own doors have no id of the plan's.</summary>
    private const string CargoDoors = "CD";

    public override Envelope Extent
    {
        get
        {
            var extent = new Envelope();
            foreach (var swing in Plan.Openings.Where(o => o.Kind != OpeningKind.CargoDoor && o.Swing is { Into: null })
                .Select(o => o.Swing!))
            {
                extent.ExpandToInclude(swing.Swept.EnvelopeInternal);
                foreach (var leaf in swing.Leaves)
                {
                    extent.ExpandToInclude(leaf.EnvelopeInternal);
                }
            }

            return extent;
        }
    }

    public override IEnumerable<LegendEntry> Legend => OpeningLegend.For(Plan.Openings, Standard);

    /// <summary>As marked on the plan and in the tables.</summary>
    public static string Mark(Opening opening) => opening.Kind == OpeningKind.CargoDoor ? CargoDoors : Marks.Of(opening.Id);

    public override void Draw(PlanCanvas canvas)
    {
        foreach (var opening in Plan.Openings)
        {
            var place = OpeningPlace.Of(opening, canvas.Transform);
            string group = "opening:" + opening.Id;
            OpeningDrawing.Draw(canvas.Brush(Layer(opening.Kind), group), place, canvas.Transform);
            if (opening.Kind == OpeningKind.CargoDoor)
            {
                // The mark of the door end names it.
                continue;
            }

            canvas.Labels.Add(new LabelRequest
            {
                Id = group,
                Lines = Marks.Lines(Mark(opening)),
                KeyText = Mark(opening),
                Target = place.Reveal,
                Positions = opening.Wall.LabelsOn(),
                Priority = LabelPriority.Opening,
                CapHeight = Standard.NoteHeight,
                Tag = TagShape.Box,
                LeadTo = place.Middle,
                Group = group,
            });
        }
    }

    private static string Layer(OpeningKind kind) => kind switch
    {
        OpeningKind.Window => Layers.Glazing,
        OpeningKind.Vent => Layers.Air,
        OpeningKind.Door or OpeningKind.CargoDoor => Layers.Door,
        _ => Layers.Opening,
    };
}
