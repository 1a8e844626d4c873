using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Faces;

/// <summary>A rectangle with rounded corners as a closed line of short pieces.</summary>
internal static class RoundedBox
{
    /// <summary>Pieces of a quarter circle.</summary>
    private const int Pieces = 8;

    public static IReadOnlyList<PaperPoint> Outline(PaperBox box, double radius)
    {
        if (radius <= 0)
        {
            return [new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)];
        }

        double r = Math.Min(radius, Math.Min(box.Width, box.Height) / 2);
        PaperPoint[] centres =
            [
                new(box.Right - r, box.Bottom - r), new(box.Left + r, box.Bottom - r), new(box.Left + r, box.Top + r),
                new(box.Right - r, box.Top + r)];
        var points = new List<PaperPoint>();
        for (int corner = 0; corner < 4; corner++)
        {
            for (int i = 0; i <= Pieces; i++)
            {
                var (sin, cos) = Math.SinCos((corner + (i / (double)Pieces)) * Math.PI / 2);
                points.Add(new(centres[corner].X + (r * cos), centres[corner].Y + (r * sin)));
            }
        }

        return points;
    }
}
