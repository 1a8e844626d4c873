using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>The places that a label may try at its target, best first.</summary>
internal static class Candidates
{
    /// <summary>Between a target and a label beside it.</summary>
    private const double Gap = 0.8;

    /// <summary>A label inside a large target may slide off its middle; places tried each way.</summary>
    private const int Slides = 6;

    public static IEnumerable<PaperBox> At(LabelRequest request, double width, double height)
    {
        foreach (var target in request.OtherTargets.Prepend(request.Target))
        {
            foreach (var position in request.Positions)
            {
                yield return Box(target, position, width, height);
            }
        }

        if (request.Positions.Contains(LabelPosition.Inside))
        {
            foreach (var box in Inside(request.Target, width, height))
            {
                yield return box;
            }
        }
    }

    private static PaperBox Box(PaperBox t, LabelPosition position, double w, double h) => position switch
    {
        LabelPosition.Inside => PaperBox.Around(t.Centre, w, h),
        LabelPosition.InsideTopLeft => PaperBox.At(new(t.Left + Gap, t.Top + Gap), w, h),
        LabelPosition.InsideTopRight => PaperBox.At(new(t.Right - Gap - w, t.Top + Gap), w, h),
        LabelPosition.InsideBottomLeft => PaperBox.At(new(t.Left + Gap, t.Bottom - Gap - h), w, h),
        LabelPosition.InsideBottomRight => PaperBox.At(new(t.Right - Gap - w, t.Bottom - Gap - h), w, h),
        LabelPosition.Right => PaperBox.At(new(t.Right + Gap, t.Centre.Y - (h / 2)), w, h),
        LabelPosition.Left => PaperBox.At(new(t.Left - Gap - w, t.Centre.Y - (h / 2)), w, h),
        LabelPosition.Above => PaperBox.At(new(t.Centre.X - (w / 2), t.Top - Gap - h), w, h),
        LabelPosition.Below => PaperBox.At(new(t.Centre.X - (w / 2), t.Bottom + Gap), w, h),
        LabelPosition.AboveRight => PaperBox.At(new(t.Right, t.Top - Gap - h), w, h),
        LabelPosition.AboveLeft => PaperBox.At(new(t.Left - w, t.Top - Gap - h), w, h),
        LabelPosition.BelowRight => PaperBox.At(new(t.Right, t.Bottom + Gap), w, h),
        _ => PaperBox.At(new(t.Left - w, t.Bottom + Gap), w, h),
    };

    /// <summary>Places within the target, nearer to its middle first.</summary>
    private static IEnumerable<PaperBox> Inside(PaperBox target, double w, double h)
    {
        double x = Math.Max(0, (target.Width - w) / 2);
        double y = Math.Max(0, (target.Height - h) / 2);
        int across = x > 0 ? Slides : 0;
        int down = y > 0 ? Slides : 0;
        var shifts = new List<(double Far, double Y, double X)>(((2 * across) + 1) * ((2 * down) + 1));
        for (int i = -across; i <= across; i++)
        {
            for (int k = -down; k <= down; k++)
            {
                var (dx, dy) = (x * i / Slides, y * k / Slides);
                shifts.Add(((dx * dx) + (dy * dy), dy, dx));
            }
        }

        shifts.Sort();
        foreach (var (_, dy, dx) in shifts)
        {
            yield return PaperBox.Around(target.Centre, w, h).Moved(dx, dy);
        }
    }
}
