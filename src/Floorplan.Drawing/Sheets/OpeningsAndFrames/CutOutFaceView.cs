using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Dimensions;
using Floorplan.Drawing.Faces;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Labels;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;
using Floorplan.Sizing.Frames;

namespace Floorplan.Drawing.Sheets.OpeningsAndFrames;

/// <summary>
/// One wall unrolled with its posts, rails and castings, its openings and their frames, its holes for pipes and cables, and running
/// dimensions from the steel datum.
/// </summary>
internal sealed class CutOutFaceView : ISheetView
{
    /// <summary>Paper kept free round the view for labels, mm; own choice.</summary>
    private const double Margin = 12;

    /// <summary>Above a view the figures of its upright rows reach beyond its top.</summary>
    private const double Top = 19;

    private readonly WallFace face;
    private readonly IReadOnlyList<CutOut> cuts;
    private readonly IReadOnlyList<ServiceHole> holes;
    private readonly UnitSystem units;
    private readonly FrameHits hits;
    private readonly DrawingStandard standard;
    private readonly DimensionSet dimensions;

    public CutOutFaceView(WallFace face, IReadOnlyList<CutOut> cuts, IReadOnlyList<ServiceHole> holes, UnitSystem units, FrameHits hits)
    {
        this.hits = hits;
        this.face = face;
        this.cuts = cuts;
        this.holes = holes;
        this.units = units;
        standard = DrawingStandard.For(units);
        dimensions = new DimensionSet(face.Extent, Tape.ForSteel(units), standard);
        CutOutDimensions.Add(face, cuts, holes, dimensions);
    }

    public string Title => face.Title;

    public bool IsPlan => false;

    public double Density => 0.55;

    public PaperSpace Measure(double denominator) => new(
        (face.Extent.Width / denominator) + Outside(Side.West, denominator) + Outside(Side.East, denominator),
        (face.Extent.Height / denominator) + Outside(Side.North, denominator) + Outside(Side.South, denominator));

    public void Draw(ViewCanvas canvas)
    {
        var transform = new PlanTransform(canvas.Denominator, new PaperPoint(
            canvas.Box.Left + Outside(Side.West, canvas.Denominator),
            canvas.Box.Top + Outside(Side.North, canvas.Denominator) + (face.Extent.MaxY / canvas.Denominator)));
        dimensions.Draw(canvas.Scene, transform);
        FaceSteel.Draw(canvas.Scene, transform, face, [.. cuts.Select(Hole)], standard);
        foreach (var cut in cuts)
        {
            DrawCut(canvas, transform, cut);
            hits.Draw(canvas, transform.ToPaper(Hole(cut)), cut.Opening.Id, standard);
        }

        foreach (var hole in holes)
        {
            var at = transform.ToPaper(face.U(hole.X + Start).Millimetres, hole.Y.Millimetres);
            var outline = HoleOutline.Draw(canvas, transform, at, hole, standard);
            hits.Draw(canvas, outline, hole.Point.Id, standard);
        }

        FaceSteel.DrawFloorLine(canvas, transform, face, standard);
        DrawDatum(canvas, transform);
    }

    /// <summary>The hole in the steel, in face coordinates.</summary>
    private Box Hole(CutOut cut) => face.Rectangle(
        cut.Along + Start, cut.Right + Start, cut.Bottom + face.Shell.DatumHeight, cut.Top + face.Shell.DatumHeight);

    private Length Start => face.Wall.From;

    private void DrawCut(ViewCanvas canvas, PlanTransform transform, CutOut cut)
    {
        string group = "cut:" + cut.Opening.Id;
        var hole = transform.ToPaper(Hole(cut));
        var wide = new Pen(standard.Wide);
        canvas.Scene.Polyline(RoundedBox.Outline(hole, transform.Size(cut.Radius)), true, wide, Layers.Opening, group, Band.Wall);
        if (cut.Frame is { } frame)
        {
            var clear = transform.ToPaper(face.Rectangle(
                cut.ClearAlong + Start, cut.ClearAlong + Start + cut.Opening.Width, cut.Opening.Sill, cut.Opening.Sill
                    + cut.Opening.Height));
            FrameLines(canvas.Scene, hole, clear, frame.HasSill, group);
        }

        canvas.Labels.Add(new LabelRequest
        {
            Id = group,
            Lines = Marks.Lines(OpeningLayer.Mark(cut.Opening)),
            KeyText = OpeningLayer.Mark(cut.Opening),
            Target = hole,
            Positions = [LabelPosition.Inside, LabelPosition.Above, LabelPosition.Right, LabelPosition.Left, LabelPosition.Below],
            Priority = LabelPriority.Opening,
            CapHeight = standard.NoteHeight,
            Tag = TagShape.Box,
            Group = group,
        });
    }

    /// <summary>The inside of the frame and the mitres at its corners.</summary>
    private void FrameLines(SceneBuilder scene, PaperBox hole, PaperBox clear, bool hasSill, string group)
    {
        var pen = new Pen(standard.Narrow);
        var foot = hasSill ? clear.Bottom : hole.Bottom;
        PaperPoint[] inside = [new(clear.Left, foot), new(clear.Left, clear.Top), new(clear.Right, clear.Top), new(clear.Right, foot)];
        scene.Polyline(inside, hasSill, pen, Layers.Frame, group);
        scene.Line(new(hole.Left, hole.Top), new(clear.Left, clear.Top), pen, Layers.Frame, group);
        scene.Line(new(hole.Right, hole.Top), new(clear.Right, clear.Top), pen, Layers.Frame, group);
        if (hasSill)
        {
            scene.Line(new(hole.Left, hole.Bottom), new(clear.Left, clear.Bottom), pen, Layers.Frame, group);
            scene.Line(new(hole.Right, hole.Bottom), new(clear.Right, clear.Bottom), pen, Layers.Frame, group);
        }
    }

    private void DrawDatum(ViewCanvas canvas, PlanTransform transform)
    {
        var datum = transform.ToPaper(face.DatumU.Millimetres, 0);
        canvas.Scene.SetDatum(datum);
        DatumSymbol.Draw(new SymbolBrush(canvas.Scene, standard, Layers.Marks, "datum", Band.Annotation), datum);
    }

    private double Outside(Side side, double denominator)
        => Math.Max(side == Side.North ? Top : Margin, dimensions.Depth(side, denominator));
}
