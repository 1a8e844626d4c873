using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Frames;

/// <summary>Plan north is up the sheet; true north, when said, is drawn as a second, thin needle.</summary>
internal static class NorthArrow
{
    public const double Width = 14;
    private const double Radius = 5;

    public static void Draw(SceneBuilder scene, PaperPoint centre, double? trueNorth, DrawingStandard standard)
    {
        var pen = new Pen(standard.Narrow);
        scene.Circle(centre, Radius, pen, Layers.Marks, "north", Band.Annotation);
        var tip = centre + new PaperPoint(0, -Radius);
        var foot = centre + new PaperPoint(0, Radius);
        scene.Line(foot, tip, pen, Layers.Marks, "north", Band.Annotation);
        scene.Fill([[tip, centre + new PaperPoint(1.6, 1), centre]], Palette.Black, Layers.Marks, "north", Band.Annotation);
        scene.Text(
            new TextItem("N", tip + new PaperPoint(0, -0.8), standard.NoteHeight, TextAnchor.Middle, Layers.Marks, "north", Bold: true));
        if (trueNorth is { } degrees)
        {
            var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
            scene.Line(centre, centre
                + new PaperPoint(Radius * sin, -Radius * cos), new Pen(standard.Narrow, Palette.Blue, Dashes.Dashed(standard.Fine)),
                    Layers.Marks, "north", Band.Annotation);
        }
    }
}
