using System.Globalization;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Frames;

/// <summary>
/// The border of a sheet with its zones (ISO 5457: 20 mm filing margin, else 10; zones of 50 mm from the centring marks; F2, M).
/// </summary>
internal static class SheetFrame
{
    private const double FilingMargin = 20;
    private const double Margin = 10;
    private const double UsMargin = 13;
    private const double Zone = 50;
    private const double ZoneLine = 0.35;
    private const double ZoneHeight = 2.5;
    private const double Band = 5;
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private const string Group = "frame";

    /// <summary>The drawing space inside the frame line.</summary>
    public static PaperBox Inside(PaperSize paper, UnitSystem units) => units == UnitSystem.Metric
        ? new PaperBox(FilingMargin, Margin, paper.Width - Margin, paper.Height - Margin)
        : new PaperBox(UsMargin, UsMargin, paper.Width - UsMargin, paper.Height - UsMargin);

    /// <param name="title">The title block, which a centring mark does not cut.</param>
    public static void Draw(SceneBuilder scene, PaperSize paper, PaperBox inside, PaperBox title, DrawingStandard standard)
    {
        scene.Rectangle(inside, new Pen(standard.FrameLine), Layers.TitleBlock, Group, Scene.Band.Annotation);
        var outer = inside.Grown(Band);
        scene.Rectangle(outer, new Pen(standard.Narrow), Layers.TitleBlock, Group, Scene.Band.Annotation);
        double x = paper.Width / 2;
        double y = paper.Height / 2;
        Across(scene, inside, x);
        Down(scene, inside, y);
        foreach (var (from, to) in new[]
        {
            (new PaperPoint(x, inside.Top - Band), new PaperPoint(x, inside.Top + Band)),
                (new PaperPoint(x, inside.Bottom + Band), new PaperPoint(x, inside.Bottom - (x > title.Left ? 0 : Band))),
            (new PaperPoint(inside.Left - Band, y), new PaperPoint(inside.Left + Band, y)),
                (new PaperPoint(inside.Right + Band, y), new PaperPoint(inside.Right - (y > title.Top ? 0 : Band), y)),
        })
        {
            scene.Line(from, to, new Pen(standard.FrameLine), Layers.TitleBlock, Group, Scene.Band.Annotation);
        }
    }

    private static void Across(SceneBuilder scene, PaperBox inside, double centre)
    {
        double[] borders = Borders(inside.Left, inside.Right, centre);
        foreach (double x in borders.Skip(1).SkipLast(1))
        {
            scene.Line(new(x, inside.Top - Band), new(x, inside.Top), new Pen(ZoneLine), Layers.TitleBlock, Group, Scene.Band.Annotation);
            scene.Line(
                new(x, inside.Bottom), new(x, inside.Bottom + Band), new Pen(ZoneLine), Layers.TitleBlock, Group, Scene.Band.Annotation);
        }

        for (int i = 0; i + 1 < borders.Length; i++)
        {
            string number = (i + 1).ToString(CultureInfo.InvariantCulture);
            Mark(scene, number, (borders[i] + borders[i + 1]) / 2, inside.Top - (Band / 2));
            Mark(scene, number, (borders[i] + borders[i + 1]) / 2, inside.Bottom + (Band / 2));
        }
    }

    private static void Down(SceneBuilder scene, PaperBox inside, double centre)
    {
        double[] borders = Borders(inside.Top, inside.Bottom, centre);
        foreach (double y in borders.Skip(1).SkipLast(1))
        {
            scene.Line(new(inside.Left - Band, y), new(inside.Left, y), new Pen(ZoneLine), Layers.TitleBlock, Group, Scene.Band.Annotation);
            scene.Line(
                new(inside.Right, y), new(inside.Right + Band, y), new Pen(ZoneLine), Layers.TitleBlock, Group, Scene.Band.Annotation);
        }

        for (int i = 0; i + 1 < borders.Length; i++)
        {
            string letter = Letters[i % Letters.Length].ToString();
            Mark(scene, letter, inside.Left - (Band / 2), (borders[i] + borders[i + 1]) / 2);
            Mark(scene, letter, inside.Right + (Band / 2), (borders[i] + borders[i + 1]) / 2);
        }
    }

    /// <summary>Every 50 mm from the centring mark; the corner zones take what is over.</summary>
    private static double[] Borders(double low, double high, double centre)
    {
        int before = Math.Max(1, (int)((centre - low) / Zone));
        int after = Math.Max(1, (int)((high - centre) / Zone));
        return [low, .. Enumerable.Range(-before + 1, before + after - 1).Select(k => centre + (k * Zone)), high];
    }

    private static void Mark(SceneBuilder scene, string text, double x, double y) =>
        scene.Text(new TextItem(text, new PaperPoint(x, y + (ZoneHeight / 2)), ZoneHeight, TextAnchor.Middle, Layers.TitleBlock, Group));
}
