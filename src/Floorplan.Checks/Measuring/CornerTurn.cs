using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Measuring;

/// <summary>A rectangle pushed round a corner.</summary>
public static class CornerTurn
{
    /// <summary>Steps of the angle that is looked at; the answer is within a thousandth.</summary>
    private const int Steps = 1800;

    /// <summary>
    /// The longest rectangle of a width that goes round a right-angled corner between two passages, all in mm; no less than zero. At
    /// each angle both its ends touch the outer walls while its side touches the inner corner: the shortest of those lengths is the
    /// answer. For a width of nothing it is the textbook ladder, (a^(2/3) + b^(2/3))^(3/2).
    /// </summary>
    public static double Longest(double a, double b, double width)
    {
        double longest = double.PositiveInfinity;
        for (int i = 1; i < Steps; i++)
        {
            var (sin, cos) = Math.SinCos(Math.PI / 2 * i / Steps);
            longest = Math.Min(longest, ((a * cos) + (b * sin) - width) / (sin * cos));
        }

        return Math.Max(0, longest);
    }

    /// <summary>Where a way bends by as much in all within a short stretch, and its directions before and after.</summary>
    /// <param name="within">Bends nearer together than this are one, mm.</param>
    /// <param name="least">In degrees.</param>
    public static IEnumerable<Bend> Bends(LineString path, double within, double least)
    {
        var points = path.Coordinates;
        for (int i = 1; i + 1 < points.Length; i++)
        {
            int last = i;
            while (last + 2 < points.Length && points[i].Distance(points[last + 1]) <= within)
            {
                last++;
            }

            double before = Angle(points[i - 1], points[i]);
            double after = Angle(points[last], points[last + 1]);
            double turn = Math.Abs(Math.IEEERemainder(after - before, 2 * Math.PI)) * 180 / Math.PI;
            if (turn >= least)
            {
                yield return new Bend(points[(i + last) / 2], Along(points[i], before + Math.PI), Along(points[last], after));
                i = last;
            }
        }

        static Direction Along(Coordinate from, double angle) => new(from, Math.Cos(angle), Math.Sin(angle));
    }

    private static double Angle(Coordinate from, Coordinate to) => Math.Atan2(to.Y - from.Y, to.X - from.X);
}

/// <param name="At">Middle of the bend.</param>
/// <param name="Before">From where it begins, back the way that one came.</param>
/// <param name="After">From where it ends, on the way that one goes.</param>
public sealed record Bend(Coordinate At, Direction Before, Direction After);

/// <param name="X">East, of a length of one.</param>
public readonly record struct Direction(Coordinate From, double X, double Y);
