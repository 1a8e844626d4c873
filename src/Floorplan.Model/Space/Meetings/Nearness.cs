using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Meetings;

/// <summary>How two straight pieces lie to each other.</summary>
internal static class Nearness
{
    /// <summary>
    /// The part of a to b (0 at a, 1 at b) that lies within a distance of c to d, or null. It is one stretch, because the floor
    /// within that distance of a line is convex: a strip with two round ends.
    /// </summary>
    public static (double From, double To)? Part(Coordinate a, Coordinate b, Coordinate c, Coordinate d, double within)
    {
        double from = double.PositiveInfinity, to = double.NegativeInfinity;
        InCircle(c);
        InCircle(d);
        InStrip();
        return from <= to ? (from, to) : null;

        void InCircle(Coordinate centre)
        {
            double dx = b.X - a.X, dy = b.Y - a.Y, ex = a.X - centre.X, ey = a.Y - centre.Y;
            double square = (dx * dx) + (dy * dy), half = (dx * ex) + (dy * ey), rest = (ex * ex) + (ey * ey) - (within * within);
            if (square == 0)
            {
                Take(rest <= 0 ? 0 : 1, rest <= 0 ? 1 : 0);
                return;
            }

            double root = (half * half) - (square * rest);
            if (root >= 0)
            {
                Take((-half - Math.Sqrt(root)) / square, (-half + Math.Sqrt(root)) / square);
            }
        }

        void InStrip()
        {
            double low = 0, high = 1;
            Clip(Line.Offset(c, d, a), Line.Offset(c, d, b), -within, within);
            Clip(Line.Along(c, d, a), Line.Along(c, d, b), 0, 1);
            Take(low, high);

            void Clip(double atA, double atB, double least, double most)
            {
                if (atA == atB)
                {
                    high = atA < least || atA > most ? -1 : high;
                    return;
                }

                double first = (least - atA) / (atB - atA), last = (most - atA) / (atB - atA);
                low = Math.Max(low, Math.Min(first, last));
                high = Math.Min(high, Math.Max(first, last));
            }
        }

        void Take(double low, double high)
        {
            low = Math.Max(0, low);
            high = Math.Min(1, high);
            if (low <= high)
            {
                from = Math.Min(from, low);
                to = Math.Max(to, high);
            }
        }
    }

    /// <summary>Where a to b crosses c to d, or null when they do not cross or run along each other.</summary>
    public static Coordinate? Crossing(Coordinate a, Coordinate b, Coordinate c, Coordinate d)
    {
        double atC = Line.Offset(a, b, c), atD = Line.Offset(a, b, d), atA = Line.Offset(c, d, a), atB = Line.Offset(c, d, b);
        return atC * atD > 0 || atA * atB > 0 || atC == atD || atA == atB ? null : Line.At(c, d, atC / (atC - atD));
    }
}
