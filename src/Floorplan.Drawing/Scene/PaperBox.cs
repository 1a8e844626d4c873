namespace Floorplan.Drawing.Scene;

/// <summary>An upright rectangle on paper, millimetres, y down.</summary>
public readonly record struct PaperBox(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Holds nothing; grows with <see cref="With(PaperPoint)"/>.</summary>
    public static PaperBox Nothing { get; } =
        new(double.PositiveInfinity, double.PositiveInfinity, double.NegativeInfinity, double.NegativeInfinity);

    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public bool IsNothing => Right < Left || Bottom < Top;

    public PaperPoint Centre => new((Left + Right) / 2, (Top + Bottom) / 2);

    public static PaperBox At(PaperPoint topLeft, double width, double height)
        => new(topLeft.X, topLeft.Y, topLeft.X + width, topLeft.Y + height);

    public static PaperBox Around(PaperPoint centre, double width, double height) =>
        new(centre.X - (width / 2), centre.Y - (height / 2), centre.X + (width / 2), centre.Y + (height / 2));

    public static PaperBox Of(PaperPoint a, PaperPoint b) =>
        new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));

    public static PaperBox Of(IReadOnlyList<PaperPoint> points)
    {
        var box = Nothing;
        for (int i = 0; i < points.Count; i++)
        {
            box = box.With(points[i]);
        }

        return box;
    }

    /// <summary>Round all rings of an area.</summary>
    public static PaperBox Of(IReadOnlyList<IReadOnlyList<PaperPoint>> rings)
    {
        var box = Nothing;
        for (int i = 0; i < rings.Count; i++)
        {
            box = box.With(Of(rings[i]));
        }

        return box;
    }

    public PaperBox With(PaperPoint point) =>
        new(Math.Min(Left, point.X), Math.Min(Top, point.Y), Math.Max(Right, point.X), Math.Max(Bottom, point.Y));

    public PaperBox With(PaperBox other) =>
        new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    public PaperBox Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    public PaperBox Moved(double x, double y) => new(Left + x, Top + y, Right + x, Bottom + y);

    /// <summary>True when they share more than an edge.</summary>
    public bool Overlaps(PaperBox other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>True when they share an edge, a corner or more.</summary>
    public bool Touches(PaperBox other) => Left <= other.Right && other.Left <= Right && Top <= other.Bottom && other.Top <= Bottom;

    public bool Holds(PaperBox other) => other.Left >= Left && other.Right <= Right && other.Top >= Top && other.Bottom <= Bottom;

    public bool Holds(PaperPoint point) => point.X >= Left && point.X <= Right && point.Y >= Top && point.Y <= Bottom;

    /// <summary>True when a straight line runs through the inside.</summary>
    public bool IsCutBy(PaperPoint from, PaperPoint to) => Cut(from, to) is not null;

    /// <summary>The shares of a straight line between which it runs through the inside, from 0 to 1; null when it misses.</summary>
    public (double Enter, double Leave)? Cut(PaperPoint from, PaperPoint to)
    {
        double enter = 0;
        double leave = 1;
        return Clip(to.X - from.X, Left - from.X, Right - from.X, ref enter, ref leave)
            && Clip(to.Y - from.Y, Top - from.Y, Bottom - from.Y, ref enter, ref leave)
            && leave > enter ? (enter, leave) : null;
    }

    private static bool Clip(double direction, double low, double high, ref double enter, ref double leave)
    {
        if (direction == 0)
        {
            return low < 0 && high > 0;
        }

        double a = low / direction;
        double b = high / direction;
        enter = Math.Max(enter, Math.Min(a, b));
        leave = Math.Min(leave, Math.Max(a, b));
        return enter <= leave;
    }
}
