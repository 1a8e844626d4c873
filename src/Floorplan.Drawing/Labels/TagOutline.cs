using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>Outlines of tags, closed and straight-sided, in the box that the tag has.</summary>
internal static class TagOutline
{
    /// <summary>Of an octagon's side, what each corner takes away.</summary>
    private const double OctagonCut = 0.29;

    /// <summary>Of the height of a gable's box, what is roof; lower, so that figures find room below it.</summary>
    private const double Roof = 0.3;

    public static PaperPoint[] Of(TagShape shape, PaperBox box)
    {
        double cut = Math.Min(box.Height, box.Width) / 2;
        double mid = box.Centre.Y;
        return shape switch
        {
            TagShape.Diamond => [new(box.Centre.X, box.Top), new(box.Right, mid), new(box.Centre.X, box.Bottom), new(box.Left, mid)],
            TagShape.Octagon => Octagon(box, box.Width * OctagonCut),
            TagShape.Gable => Gable(box, box.Top + (box.Height * Roof)),
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

    public static PaperPoint[] Ring(PaperPoint centre, double radius)
        => [.. HalfRing(centre, radius, -90), .. HalfRing(centre, radius, 90)];

    private static PaperPoint[] Octagon(PaperBox box, double cut) =>
    [
        new(box.Left + cut, box.Top), new(box.Right - cut, box.Top), new(box.Right, box.Top + cut), new(box.Right, box.Bottom - cut),
        new(box.Right - cut, box.Bottom), new(box.Left + cut, box.Bottom), new(box.Left, box.Bottom - cut), new(box.Left, box.Top + cut),
    ];

    private static PaperPoint[] Gable(PaperBox box, double eaves)
        => [new(box.Centre.X, box.Top), new(box.Right, eaves), new(box.Right, box.Bottom), new(box.Left, box.Bottom), new(box.Left, eaves)];

    private static IEnumerable<PaperPoint> HalfRing(PaperPoint centre, double radius, double fromDegrees)
    {
        const int steps = 8;
        for (int i = 0; i <= steps; i++)
        {
            var (sin, cos) = Math.SinCos((fromDegrees + (180.0 * i / steps)) * Math.PI / 180);
            yield return new PaperPoint(centre.X + (radius * cos), centre.Y + (radius * sin));
        }
    }
}
