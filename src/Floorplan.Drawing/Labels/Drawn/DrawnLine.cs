using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels.Drawn;

/// <summary>A straight piece of what is drawn, as labels look at it.</summary>
internal sealed record DrawnLine(PaperPoint From, PaperPoint To, double HalfWidth)
{
    /// <summary>To what the eye can tell apart, so that lines on each other are found equal.</summary>
    public static DrawnLine Rounded(PaperPoint from, PaperPoint to, double width) => new(Rounded(from), Rounded(to), width / 2);

    public static PaperPoint Rounded(PaperPoint p) => new(Math.Round(p.X, 2), Math.Round(p.Y, 2));

    /// <summary>True when it crosses another line inside both.</summary>
    public bool Crosses(PaperPoint from, PaperPoint to) =>
        Side(from, to, From) * Side(from, to, To) < 0 && Side(From, To, from) * Side(From, To, to) < 0;

    private static int Side(PaperPoint a, PaperPoint b, PaperPoint p)
        => Math.Sign(((b.X - a.X) * (p.Y - a.Y)) - ((b.Y - a.Y) * (p.X - a.X)));
}
