namespace Floorplan.Model.Space.Search;

/// <summary>
/// What one search knows of the corners: the shortest known way to each, and to each way of turning there. Kept between
/// searches so that a short search in a big plan does not pay for all its corners; <see cref="Clear"/> forgets at once.
/// </summary>
internal sealed class Turns
{
    /// <summary>Lengths that differ by less are equal, in mm.</summary>
    public const double Equal = 1e-6;

    private int[] seen = [];
    private double[] distance = [];
    private double[] walked = [];
    private int[] from = [];
    private int now;

    /// <summary>A corner and the side that the way turns to there, as one number.</summary>
    public static int Of(int corner, bool left) => (corner * 2) + (left ? 1 : 0);

    public void Clear() => now++;

    /// <summary>Length of the shortest known way to a corner; infinite when none is known.</summary>
    public double Distance(int corner) => corner < seen.Length && seen[corner] == now ? distance[corner] : double.PositiveInfinity;

    /// <summary>Notes that a way sees a corner at that length.</summary>
    public void Note(int corner, double length)
    {
        Touch(corner);
        distance[corner] = Math.Min(distance[corner], length);
    }

    /// <summary>
    /// Whether a way that turns at a corner after the turn <paramref name="before"/> can still be part of a shortest way. Of
    /// equally short ways with the same turn the first one does: whatever the others see besides can be reached by a shorter
    /// way that does not turn at this corner.
    /// </summary>
    public bool Improve(int turn, double length, int before)
    {
        Note(turn / 2, length);
        if (length > distance[turn / 2] + Equal || length > walked[turn] + Equal || (length > walked[turn] - Equal && before != from[turn]))
        {
            return false;
        }

        if (length < walked[turn])
        {
            (walked[turn], from[turn]) = (length, before);
        }

        return true;
    }

    private void Touch(int corner)
    {
        if (corner >= seen.Length)
        {
            int size = Math.Max(corner + 1, seen.Length * 2);
            Array.Resize(ref seen, size);
            Array.Resize(ref distance, size);
            Array.Resize(ref walked, size * 2);
            Array.Resize(ref from, size * 2);
        }

        if (seen[corner] != now)
        {
            seen[corner] = now;
            distance[corner] = walked[corner * 2] = walked[(corner * 2) + 1] = double.PositiveInfinity;
        }
    }
}
