namespace Floorplan.Model.Space.Search;

/// <summary>
/// The shortest known way to each corner, for each way of turning there. Of equally short ways with the same turn the
/// first one does: whatever the others see besides can be reached by a shorter way that does not turn at this corner.
/// </summary>
internal sealed class Turns
{
    /// <summary>Lengths that differ by less are equal, in mm.</summary>
    private const double Equal = 1e-6;

    private readonly Dictionary<int, (double Walked, int From)> best = [];

    /// <summary>A corner and the side that the way turns to there, as one number.</summary>
    public static int Of(int corner, bool left) => (corner * 2) + (left ? 1 : 0);

    /// <summary>Whether a way that comes from the turn <paramref name="from"/> can still be part of a shortest way.</summary>
    public bool Improve(int turn, double walked, int from)
    {
        if (best.TryGetValue(turn ^ 1, out var other) && walked > other.Walked + Equal)
        {
            return false;
        }

        if (best.TryGetValue(turn, out var known))
        {
            if (walked > known.Walked + Equal || (walked > known.Walked - Equal && from != known.From))
            {
                return false;
            }

            if (walked >= known.Walked)
            {
                return true;
            }
        }

        best[turn] = (walked, from);
        return true;
    }

    /// <summary>Whether a shorter way to the corner has been found since.</summary>
    public bool IsStale(int turn, double walked) =>
        turn >= 0 && ((best.TryGetValue(turn, out var a) && walked > a.Walked + Equal) || (best.TryGetValue(turn ^ 1, out var b) && walked > b.Walked + Equal));
}
