using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Charts;

/// <summary>Lines of a family, told apart without colour: by their dashes and by the marks at their points.</summary>
internal static class ChartPens
{
    private const double Size = 0.9;

    private static readonly IReadOnlyList<double>?[] Dashes = [null, [4, 1.2], [1.2, 1], [5, 1, 1, 1]];

    public static Pen Of(int index, DrawingStandard standard) => new(standard.Text, Palette.Black, Dashes[index % Dashes.Length]);

    /// <summary>Disc, square, triangle, diamond; open ones after the fourth.</summary>
    public static void Marker(SceneBuilder scene, PaperPoint at, int index, DrawingStandard standard, string group)
    {
        PaperPoint[] corners = (index % 4) switch
        {
            0 => [.. Enumerable.Range(0, 12).Select(i => at + Turned(i * Math.PI / 6))],
            1 => Around(at, (-1, -1), (1, -1), (1, 1), (-1, 1)),
            2 => Around(at, (0, -1.3), (1.2, 1), (-1.2, 1)),
            _ => Around(at, (0, -1.4), (1.4, 0), (0, 1.4), (-1.4, 0)),
        };
        bool open = index / 4 % 2 == 1;
        scene.Fill([corners], open ? Palette.White : Palette.Black, Layers.Chart, group, Band.Annotation);
        scene.Polyline(corners, true, new Pen(standard.Narrow), Layers.Chart, group, Band.Annotation);
    }

    private static PaperPoint[] Around(PaperPoint at, params (double X, double Y)[] corners)
        => [.. corners.Select(c => at + new PaperPoint(c.X * Size, c.Y * Size))];

    private static PaperPoint Turned(double angle) => new(Math.Round(Size * Math.Cos(angle), 3), Math.Round(Size * Math.Sin(angle), 3));
}
