using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Measuring;

/// <summary>Where a way bends, and stretches of it that hold bends too near together to be turned at one by one.</summary>
internal sealed class WayBends
{
    private readonly Coordinate[] points;
    private readonly double[] along;

    public WayBends(LineString path)
    {
        points = path.Coordinates;
        along = new double[points.Length];
        for (int i = 1; i < points.Length; i++)
        {
            along[i] = along[i - 1] + points[i].Distance(points[i - 1]);
        }
    }

    /// <summary>In the order of the way.</summary>
    /// <param name="within">Corners nearer together than this are one bend, mm.</param>
    /// <param name="least">What a bend turns by in all, in degrees; a gentler one is steered through.</param>
    /// <param name="ahead">So far before and after a bend a stretch begins and ends; stretches that would overlap are one.</param>
    public IEnumerable<BentStretch> Stretches(double within, double least, double ahead)
    {
        List<(double From, double To, Coordinate At)> bends = [.. Bends(within, least)];
        for (int first = 0; first < bends.Count;)
        {
            int last = first;
            while (last + 1 < bends.Count && bends[last + 1].From - bends[last].To < 2 * ahead)
            {
                last++;
            }

            yield return Stretch(
                Math.Max(0, bends[first].From - ahead), Math.Min(along[^1], bends[last].To + ahead),
                [.. bends[first..(last + 1)].Select(b => b.At)]);
            first = last + 1;
        }
    }

    private IEnumerable<(double From, double To, Coordinate At)> Bends(double within, double least)
    {
        for (int i = 1; i + 1 < points.Length; i++)
        {
            int last = i;
            while (last + 2 < points.Length && points[i].Distance(points[last + 1]) <= within)
            {
                last++;
            }

            double turn = Math.IEEERemainder(Angle(points[last], points[last + 1]) - Angle(points[i - 1], points[i]), 2 * Math.PI);
            if (Math.Abs(turn) * 180 / Math.PI >= least)
            {
                yield return (along[i], along[last], points[(i + last) / 2]);
                i = last;
            }
        }
    }

    private BentStretch Stretch(double from, double to, IReadOnlyList<Coordinate> bends)
    {
        var box = new Envelope(At(from).Place);
        box.ExpandToInclude(At(to).Place);
        for (int i = 0; i < points.Length; i++)
        {
            if (along[i] > from && along[i] < to)
            {
                box.ExpandToInclude(points[i]);
            }
        }

        return new BentStretch(At(from).Place, At(to).Place, At(from).Angle, bends, box);
    }

    private (Coordinate Place, double Angle) At(double mm)
    {
        int i = 1;
        while (i + 1 < points.Length && along[i] <= mm)
        {
            i++;
        }

        double part = along[i] > along[i - 1] ? (mm - along[i - 1]) / (along[i] - along[i - 1]) : 0;
        Coordinate a = points[i - 1], b = points[i];
        return (new Coordinate(a.X + ((b.X - a.X) * part), a.Y + ((b.Y - a.Y) * part)), Angle(a, b));
    }

    private static double Angle(Coordinate from, Coordinate to) => Math.Atan2(to.Y - from.Y, to.X - from.X);
}

/// <param name="Angle">In which the way leads at its beginning, radians.</param>
/// <param name="Bends">The middle of each, in order; at least one.</param>
/// <param name="Box">Round the way from beginning to end.</param>
internal sealed record BentStretch(Coordinate From, Coordinate To, double Angle, IReadOnlyList<Coordinate> Bends, Envelope Box);
