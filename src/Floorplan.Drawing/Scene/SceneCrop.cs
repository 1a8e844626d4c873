using Floorplan.Drawing.Lettering;

namespace Floorplan.Drawing.Scene;

/// <summary>Cuts the items of a scene to a window. A text belongs to the window that its middle is in, and is moved inside it.</summary>
internal sealed class SceneCrop(PaperBox window)
{
    /// <summary>Arcs that the window cuts become chords of at most so many degrees.</summary>
    private const double ArcStep = 5;

    /// <summary>Between a text and the line along the window's edge, mm.</summary>
    private const double Clear = 0.6;

    public IEnumerable<SceneItem> Cut(SceneItem item) => item switch
    {
        LineItem line => window.Cut(line.From, line.To) is var (enter, leave)
            ? [line with { From = Along(line.From, line.To, enter), To = Along(line.From, line.To, leave) }]
            : [],
        PolylineItem path when path.Points.All(window.Holds) => [path],
        PolylineItem path => Stretches(path.Closed ? [.. path.Points, path.Points[0]] : path.Points)
            .Select(p => path with { Points = p, Closed = false }),
        ArcItem arc when window.Holds(PaperBox.Around(arc.Centre, 2 * arc.Radius, 2 * arc.Radius)) => [arc],
        ArcItem arc => Stretches(Chords(arc)).Select(p => new PolylineItem(p, false, arc.Pen, arc.Layer, arc.Group)),
        AreaItem area => Rings(area.Rings) is { Count: > 0 } rings ? [area with { Rings = rings }] : [],
        TextItem text => Text(text),
        _ => [item],
    };

    public HatchArea? Cut(HatchArea hatch) => Rings(hatch.Rings) is { Count: > 0 } rings ? hatch with { Rings = rings } : null;

    /// <summary>Left and top edge belong to the window, so that a place on a match line belongs to one part only.</summary>
    public static bool Owns(PaperBox window, PaperPoint at)
        => at.X >= window.Left && at.X < window.Right && at.Y >= window.Top && at.Y < window.Bottom;

    private IEnumerable<SceneItem> Text(TextItem text)
    {
        var box = TextMeasure.Box(text);
        if (!Owns(window, box.Centre))
        {
            return [];
        }

        double x = Math.Max(0, window.Left + Clear - box.Left) - Math.Max(0, box.Right + Clear - window.Right);
        double y = Math.Max(0, window.Top + Clear - box.Top) - Math.Max(0, box.Bottom + Clear - window.Bottom);
        return [x == 0 && y == 0 ? text : text with { At = text.At + new PaperPoint(x, y) }];
    }

    /// <summary>The pieces of an open path that are in the window.</summary>
    private IEnumerable<IReadOnlyList<PaperPoint>> Stretches(IReadOnlyList<PaperPoint> points)
    {
        var piece = new List<PaperPoint>();
        for (int i = 0; i + 1 < points.Count; i++)
        {
            if (window.Cut(points[i], points[i + 1]) is not var (enter, leave))
            {
                continue;
            }

            var from = Along(points[i], points[i + 1], enter);
            if (piece.Count > 0 && piece[^1] != from)
            {
                yield return piece;
                piece = [];
            }

            if (piece.Count == 0)
            {
                piece.Add(from);
            }

            piece.Add(Along(points[i], points[i + 1], leave));
        }

        if (piece.Count > 1)
        {
            yield return piece;
        }
    }

    private List<IReadOnlyList<PaperPoint>> Rings(IReadOnlyList<IReadOnlyList<PaperPoint>> rings)
        => [.. rings.Select(Ring).Where(r => r.Count > 2)];

    /// <summary>One ring, cut by each edge of the window in turn (Sutherland and Hodgman 1974).</summary>
    private IReadOnlyList<PaperPoint> Ring(IReadOnlyList<PaperPoint> ring)
    {
        if (ring.All(window.Holds))
        {
            return ring;
        }

        var cut = Side(ring, p => p.X - window.Left);
        cut = Side(cut, p => window.Right - p.X);
        cut = Side(cut, p => p.Y - window.Top);
        return Side(cut, p => window.Bottom - p.Y);
    }

    private static List<PaperPoint> Side(IReadOnlyList<PaperPoint> ring, Func<PaperPoint, double> inside)
    {
        var kept = new List<PaperPoint>();
        for (int i = 0; i < ring.Count; i++)
        {
            var (from, to) = (ring[i], ring[(i + 1) % ring.Count]);
            double a = inside(from);
            double b = inside(to);
            if (a >= 0)
            {
                kept.Add(from);
            }

            if (a >= 0 != b >= 0)
            {
                kept.Add(Along(from, to, a / (a - b)));
            }
        }

        return kept;
    }

    private static List<PaperPoint> Chords(ArcItem arc)
    {
        double turn = arc.EndDegrees - arc.StartDegrees;
        turn = turn <= 0 ? turn + 360 : turn;
        int steps = Math.Max(1, (int)Math.Ceiling(turn / ArcStep));
        return [.. Enumerable.Range(0, steps + 1).Select(i => arc.At(arc.StartDegrees + (turn * i / steps)))];
    }

    private static PaperPoint Along(PaperPoint from, PaperPoint to, double share) => share switch
    {
        0 => from,
        1 => to,
        _ => new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share)),
    };
}
