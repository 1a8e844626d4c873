using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Language.Syntax;
using Floorplan.Model;
using Floorplan.Model.Openings;

namespace Floorplan.Drawing.Views;

/// <summary>Says on the plan which end has the doors and which the hitch.</summary>
public sealed class EndMarkLayer(Plan plan) : PlanLayer(plan)
{
    /// <summary>Shares of the end's length from its middle.</summary>
    private static readonly double[] Along = [-0.3, 0.3, -0.45, 0.45];

    public override void Draw(PlanCanvas canvas)
    {
        Mark(canvas, Plan.Shell.DoorEnd, Plan.Openings.FirstOrDefault(o => o.Kind == OpeningKind.CargoDoor) is { } door
            ? $"DOOR END ({OpeningLayer.Mark(door)})"
            : "DOOR END");
        Mark(canvas, Plan.Shell.HitchEnd, "HITCH END");
    }

    private void Mark(PlanCanvas canvas, Side? end, string text)
    {
        if (end is not { } side)
        {
            return;
        }

        var box = canvas.Transform.ToPaper(Plan.Shell.Outside.EnvelopeInternal);
        var at = side switch
        {
            Side.North => new PaperPoint(box.Centre.X, box.Top),
            Side.South => new PaperPoint(box.Centre.X, box.Bottom),
            Side.East => new PaperPoint(box.Right, box.Centre.Y),
            _ => new PaperPoint(box.Left, box.Centre.Y),
        };
        canvas.Labels.Add(new LabelRequest
        {
            Id = "end:" + text,
            Lines = [text],
            Short = text.Split(" (")[0],
            Target = PaperBox.Around(at, 2, 2),

            // A pipe or a way may leave in the middle of the end.
            OtherTargets =
            [
                .. Along.Select(
                    share => side is Side.North or Side.South
                        ? PaperBox.Around(new(at.X + (share * box.Width), at.Y), 2, 2)
                        : PaperBox.Around(new(at.X, at.Y + (share * box.Height)), 2, 2)),
            ],
            Positions = [.. side.LabelsOn().Take(3)],
            Priority = LabelPriority.Ends,
            CapHeight = Standard.NoteHeight,
            SmallestCapHeight = Standard.SmallestHeight,
            Bold = true,
            MayTurn = true,
            LeadTo = at,
            Group = "shell",
        });
    }
}
