using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views;
using Floorplan.Language.Quantities;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>One hole for a pipe, a cable, a fan or a drain: its outline, a cross at its middle, and its mark.</summary>
internal static class HoleOutline
{
    /// <summary>A smaller circle could not be seen, mm of paper.</summary>
    private const double SmallestRadius = 0.8;

    /// <summary>Drawn so large where the plan does not say how large it is; own assumption.</summary>
    private static readonly Length Usual = Length.FromMillimetres(100);

    /// <returns>The box round it on paper.</returns>
    public static PaperBox Draw(ViewCanvas canvas, PlanTransform transform, PaperPoint at, ServiceHole hole, DrawingStandard standard)
    {
        string group = "hole:" + hole.Point.Id;
        double across = Math.Max(SmallestRadius, transform.Size((hole.Width ?? Usual) / 2));
        double up = hole.Depth is { } depth ? Math.Max(SmallestRadius, transform.Size(depth / 2)) : across;
        var outline = PaperBox.Around(at, across * 2, up * 2);
        if (hole.Depth is null)
        {
            canvas.Scene.Circle(at, across, new Pen(standard.Wide), Layers.Opening, group, Band.Wall);
        }
        else
        {
            canvas.Scene.Rectangle(outline, new Pen(standard.Wide), Layers.Opening, group, Band.Wall);
        }

        var pen = new Pen(standard.Narrow);
        canvas.Scene.Line(at - new PaperPoint(across + 1, 0), at + new PaperPoint(across + 1, 0), pen, Layers.Opening, group);
        canvas.Scene.Line(at - new PaperPoint(0, up + 1), at + new PaperPoint(0, up + 1), pen, Layers.Opening, group);
        canvas.Labels.Add(new LabelRequest
        {
            Id = group,
            Lines = Marks.Lines(ServiceLayer.Mark(hole.Point)),
            Target = outline,
            Positions = [LabelPosition.AboveRight, LabelPosition.Right, LabelPosition.Left, LabelPosition.Above],
            Priority = LabelPriority.Service,
            CapHeight = standard.NoteHeight,
            Group = group,
        });
        return outline;
    }
}
