using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Meetings;

/// <summary>What one pair of legs shares: stretches of the first leg, and crossing points.</summary>
internal sealed class Shared(Coordinate? opening = null)
{
    private readonly List<(double From, double To, PathPiece PathPiece)> stretches = [];
    private Coordinate? crossing;

    public void Add(PathPiece piece, (double From, double To) part, Coordinate? cross)
    {
        stretches.Add((piece.Walked + (part.From * piece.Length), piece.Walked + (part.To * piece.Length), piece));
        crossing ??= cross;
    }

    public Meeting ToMeeting(LegRoute first, LegRoute second)
    {
        double shared = 0, end = double.NegativeInfinity, start = 0, longest = -1, middle = 0;
        foreach (var (from, to, _) in stretches.OrderBy(s => s.From))
        {
            if (from > end)
            {
                start = from;
                end = from;
            }

            if (to > end)
            {
                shared += to - end;
                end = to;
            }

            if (end - start > longest)
            {
                (longest, middle) = (end - start, (start + end) / 2);
            }
        }

        // Two routes that only cross share no stretch: the nearness before and after the crossing is the crossing itself.
        bool crossesOnly = crossing is not null && longest <= CrossingStretch;
        return new Meeting(first, second, crossing ?? opening ?? PointAt(middle), crossesOnly ? 0 : shared);
    }

    /// <summary>Nearness that a square crossing makes by itself: 300 mm before it and after it.</summary>
    private const double CrossingStretch = 601;

    private Coordinate PointAt(double along)
    {
        var piece = stretches.Where(s => s.PathPiece.Walked <= along).MaxBy(s => s.PathPiece.Walked).PathPiece ?? stretches[0].PathPiece;
        return piece.Length == 0 ? piece.A : Line.At(piece.A, piece.B, Math.Clamp((along - piece.Walked) / piece.Length, 0, 1));
    }
}
