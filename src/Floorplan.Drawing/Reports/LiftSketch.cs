using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Weights.Crane;

namespace Floorplan.Drawing.Reports;

/// <summary>A container from above, as wide as the paper lets it be; north is up.</summary>
/// <param name="width">On paper, mm.</param>
internal sealed class LiftSketch(CraneLift lift, Shell shell, double width, DrawingStandard standard) : ISheetView
{
    /// <summary>Paper for the words over and under the box, mm.</summary>
    private const double Words = 8;
    private const double Mark = 2.5;

    private readonly double scale = (width - 20) / Math.Max(1, shell.Outside.EnvelopeInternal.Width);

    public string Title => (lift.IsFull ? "Full, as it stands" : "Empty, as it is lifted") + $": {lift.Total.Text}";

    public bool IsPlan => false;

    public bool HasScale => false;

    public PaperSpace Measure(double denominator) => new(width, (shell.Outside.EnvelopeInternal.Height * scale) + (2 * Words) + 2);

    public void Draw(ViewCanvas canvas)
    {
        var scene = canvas.Scene;
        var outside = shell.Outside.EnvelopeInternal;
        var box = PaperBox.At(new(canvas.Box.Left + 10, canvas.Box.Top + Words), outside.Width * scale, outside.Height * scale);
        scene.Rectangle(box, new Pen(standard.Text), Layers.Chart, Title);

        // South-west, south-east, north-west, north-east.
        Corner(new(box.Left, box.Bottom), false);
        Corner(new(box.Right, box.Bottom), false);
        Corner(new(box.Left, box.Top), true);
        Corner(new(box.Right, box.Top), true);
        var at = box.Centre + new PaperPoint(lift.Centre.East.Value * scale, -lift.Centre.North.Value * scale);
        var pen = new Pen(standard.Text);
        scene.Line(at - new PaperPoint(Mark, 0), at + new PaperPoint(Mark, 0), pen, Layers.Chart, Title);
        scene.Line(at - new PaperPoint(0, Mark), at + new PaperPoint(0, Mark), pen, Layers.Chart, Title);
        Text("centre of weight", at + new PaperPoint(Mark + 1, -1), TextAnchor.Start);
        Text(lift.Centre.Text, at + new PaperPoint(Mark + 1, standard.NoteHeight + 1), TextAnchor.Start);

        void Corner(PaperPoint corner, bool north)
        {
            bool west = corner.X < box.Centre.X;
            var figure = lift.Corners[(north ? 2 : 0) + (west ? 0 : 1)];
            scene.Fill(PaperBox.Around(corner, Mark, Mark), Palette.Black, Layers.Chart, Title, Band.Object);
            Text(
                figure.Text, new(corner.X, north ? corner.Y - Mark : corner.Y + Mark + standard.NoteHeight),
                west ? TextAnchor.Start : TextAnchor.End);
        }

        void Text(string words, PaperPoint from, TextAnchor anchor)
            => scene.Text(new TextItem(words, from, standard.NoteHeight, anchor, Layers.Chart, Title));
    }
}
