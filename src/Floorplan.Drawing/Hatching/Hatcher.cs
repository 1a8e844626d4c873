using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Hatching;

/// <summary>
/// Turns hatch areas into real lines, clipped to their rings (even-odd) and broken for text. Lines of one style lie on one
/// grid over the whole sheet, so that neighbouring areas join up.
/// </summary>
public static class Hatcher
{
    /// <summary>Paper kept free round a text.</summary>
    private const double TextMargin = 0.6;

    private const double DotLength = 0.3;

    /// <summary>Scan lines of one area; a coarser grid is taken beyond it, so that no area costs without bound.</summary>
    private const int MostLines = 4000;

    public static IEnumerable<LineItem> Lines(HatchArea area, IReadOnlyList<PaperBox> texts)
    {
        double[] angles = area.Style.Form == HatchForm.Crossed ? [area.Style.Degrees, area.Style.Degrees + 90] : [area.Style.Degrees];
        var box = PaperBox.Of(area.Rings);
        var near = new List<PaperBox>();
        foreach (var text in texts)
        {
            if (text.Grown(TextMargin).Overlaps(box))
            {
                near.Add(text.Grown(TextMargin));
            }
        }

        foreach (double angle in angles)
        {
            foreach (var (from, to) in Clip(area, angle))
            {
                foreach (var (a, b) in WithoutTexts(from, to, near))
                {
                    if (area.Style.Form != HatchForm.Dots)
                    {
                        yield return new LineItem(a, b, area.Pen, area.Layer, area.Group);
                        continue;
                    }

                    foreach (var dot in Dots(a, b, area.Style.Pitch))
                    {
                        yield return new LineItem(dot, dot + new PaperPoint(DotLength, 0), area.Pen, area.Layer, area.Group);
                    }
                }
            }
        }
    }

    private static IEnumerable<(PaperPoint From, PaperPoint To)> Clip(HatchArea area, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        PaperPoint[][] rings =
            [.. area.Rings.Select(r => r.Select(p => new PaperPoint((p.X * cos) - (p.Y * sin), (p.X * sin) + (p.Y * cos))).ToArray())];
        double low = rings.SelectMany(r => r).Select(p => p.Y).DefaultIfEmpty(0).Min();
        double high = rings.SelectMany(r => r).Select(p => p.Y).DefaultIfEmpty(0).Max();
        double pitch = area.Style.Pitch * Math.Max(1, Math.Ceiling((high - low) / area.Style.Pitch / MostLines));
        for (double y = Math.Ceiling(low / pitch) * pitch; y < high; y += pitch)
        {
            var cuts = Cuts(rings, y);
            for (int i = 0; i + 1 < cuts.Count; i += 2)
            {
                yield return (Back(cuts[i], y, sin, cos), Back(cuts[i + 1], y, sin, cos));
            }
        }
    }

    private static List<double> Cuts(PaperPoint[][] rings, double y)
    {
        var cuts = new List<double>();
        foreach (var ring in rings)
        {
            for (int i = 0; i < ring.Length; i++)
            {
                var a = ring[i];
                var b = ring[(i + 1) % ring.Length];
                if ((a.Y <= y) != (b.Y <= y))
                {
                    cuts.Add(a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X)));
                }
            }
        }

        cuts.Sort();
        return cuts;
    }

    private static PaperPoint Back(double x, double y, double sin, double cos) => new((x * cos) + (y * sin), (y * cos) - (x * sin));

    /// <summary>The stretches of a line that lie outside all boxes.</summary>
    private static IEnumerable<(PaperPoint A, PaperPoint B)> WithoutTexts(PaperPoint from, PaperPoint to, List<PaperBox> boxes)
    {
        var gaps = new List<(double From, double To)>();
        foreach (var box in boxes)
        {
            if (box.Cut(from, to) is { } gap)
            {
                gaps.Add(gap);
            }
        }

        gaps.Sort();
        double at = 0;
        foreach (var (start, end) in gaps)
        {
            if (start > at)
            {
                yield return (Along(from, to, at), Along(from, to, start));
            }

            at = Math.Max(at, end);
        }

        if (at < 1)
        {
            yield return (Along(from, to, at), to);
        }
    }

    private static PaperPoint Along(PaperPoint a, PaperPoint b, double share)
        => new(a.X + ((b.X - a.X) * share), a.Y + ((b.Y - a.Y) * share));

    private static IEnumerable<PaperPoint> Dots(PaperPoint a, PaperPoint b, double pitch)
    {
        for (double x = Math.Ceiling(a.X / pitch) * pitch; x + DotLength < b.X; x += pitch)
        {
            yield return new PaperPoint(x, a.Y);
        }
    }
}
