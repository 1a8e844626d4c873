using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>A label's size at one height and turn, and its drawing at a place.</summary>
internal sealed record LabelShape(LabelRequest Request, IReadOnlyList<string> Lines, double CapHeight, bool Turned)
{
    private const double TagPad = 0.9;
    private const double TagPen = 0.25;

    private double TextWidth { get; } = Lines.Max(l => TextMeasure.Width(l, CapHeight, Request.Bold));

    private double TextHeight { get; } = TextMeasure.BlockHeight(Lines.Count, CapHeight);

    public double Width => Turned ? Size.Height : Size.Width;

    public double Height => Turned ? Size.Width : Size.Height;

    private (double Width, double Height) Size
    {
        get
        {
            double w = TextWidth;
            double h = TextHeight;
            double side = Math.Max(w, h) + (2 * TagPad);
            return Request.Tag switch
            {
                TagShape.None => (w, h),
                TagShape.Circle => (side, side),
                TagShape.Diamond or TagShape.Octagon or TagShape.Gable => (side * 1.25, side * 1.25),
                TagShape.Hexagon => (w + h + TagPad, h + (2 * TagPad)),
                TagShape.Capsule => (w + h, h + (2 * TagPad)),
                _ => (w + (2 * TagPad), h + (2 * TagPad)),
            };
        }
    }

    public void Draw(SceneBuilder scene, PaperBox box)
    {
        DrawTag(scene, box);
        var centre = box.Centre;
        double first = (-TextHeight / 2) + (CapHeight * TextMeasure.Ascent);
        for (int i = 0; i < Lines.Count; i++)
        {
            double down = first + (i * CapHeight * TextMeasure.LinePitch);
            var at = Turned ? new PaperPoint(centre.X + down, centre.Y) : new PaperPoint(centre.X, centre.Y + down);
            scene.Text(
                new TextItem(Lines[i], at, CapHeight, TextAnchor.Middle, Request.Layer, Request.Group, Turned
                    ? 90
                    : 0, Request.Bold, Request.Colour));
        }
    }

    private void DrawTag(SceneBuilder scene, PaperBox box)
    {
        var pen = new Pen(TagPen, Request.Colour);
        if (Request.Tag == TagShape.None)
        {
            return;
        }

        if (Request.Tag == TagShape.Circle)
        {
            scene.Fill([TagOutline.Ring(box.Centre, box.Width / 2)], Palette.White, Request.Layer, Request.Group, Band.Annotation);
            scene.Circle(box.Centre, box.Width / 2, pen, Request.Layer, Request.Group, Band.Annotation);
            return;
        }

        var outline = TagOutline.Of(Request.Tag, box);
        scene.Fill([outline], Palette.White, Request.Layer, Request.Group, Band.Annotation);
        scene.Polyline(outline, true, pen, Request.Layer, Request.Group, Band.Annotation);
    }
}
