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
                TagShape.Circle or TagShape.Diamond
                    => (Request.Tag == TagShape.Circle ? side : side * 1.25, Request.Tag == TagShape.Circle ? side : side * 1.25),
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
            scene.Fill([Ring(box.Centre, box.Width / 2)], Palette.White, Request.Layer, Request.Group, Band.Annotation);
            scene.Circle(box.Centre, box.Width / 2, pen, Request.Layer, Request.Group, Band.Annotation);
            return;
        }

        var outline = Outline(box);
        scene.Fill([outline], Palette.White, Request.Layer, Request.Group, Band.Annotation);
        scene.Polyline(outline, true, pen, Request.Layer, Request.Group, Band.Annotation);
    }

    private PaperPoint[] Outline(PaperBox box)
    {
        double cut = Math.Min(box.Height, box.Width) / 2;
        double mid = box.Centre.Y;
        return Request.Tag switch
        {
            TagShape.Diamond => [new(box.Centre.X, box.Top), new(box.Right, mid), new(box.Centre.X, box.Bottom), new(box.Left, mid)],
            TagShape.Hexagon =>
            [
                new(box.Left + (cut / 2), box.Top), new(box.Right - (cut / 2), box.Top), new(box.Right, mid),
                new(box.Right - (cut / 2), box.Bottom), new(box.Left + (cut / 2), box.Bottom), new(box.Left, mid),
            ],
            TagShape.Capsule =>
            [
                .. HalfRing(new(box.Right - cut, mid), cut, -90), .. HalfRing(new(box.Left + cut, mid), cut, 90),
            ],
            _ => [new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)],
        };
    }

    private static IEnumerable<PaperPoint> HalfRing(PaperPoint centre, double radius, double fromDegrees)
    {
        const int steps = 8;
        for (int i = 0; i <= steps; i++)
        {
            var (sin, cos) = Math.SinCos((fromDegrees + (180.0 * i / steps)) * Math.PI / 180);
            yield return new PaperPoint(centre.X + (radius * cos), centre.Y + (radius * sin));
        }
    }

    private static PaperPoint[] Ring(PaperPoint centre, double radius)
        => [.. HalfRing(centre, radius, -90), .. HalfRing(centre, radius, 90)];
}
