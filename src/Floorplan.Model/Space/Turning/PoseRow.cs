using System.Buffers;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Space.Turning;

/// <summary>All places on one line from west to east where a rectangle at one angle is free, as stretches in which it slides.</summary>
internal sealed class PoseRow(int angle, int line, double y)
{
    private readonly List<Stretch> stretches = [];
    private List<(double West, double East, Station Of)>? things;

    public int Angle => angle;

    public int Line => line;

    public double Y => y;

    public List<Stretch> Stretches => stretches;

    /// <summary>Things that keep it from a part of the line.</summary>
    public List<(double West, double East, Station Of)> Things => things ?? [];

    /// <summary>Works the stretches out; gives back how many edges that counts as.</summary>
    /// <param name="itself">The thing that is moved, which is not in its own way.</param>
    public int Fill(SolidEdges edges, TurnedBox box, double west, double east, Station? itself)
    {
        double bottom = y - box.HalfHeight, top = y + box.HalfHeight;
        var blocked = new BlockedParts();
        foreach (var tier in edges.Tiers)
        {
            var (first, end) = tier.Range(bottom, top);
            foreach (ref readonly var edge in tier.Edges.AsSpan(first, end - first))
            {
                if (edge.High > bottom
                    && (edge.Of is null || !ReferenceEquals(edge.Of, itself))
                    && box.IsBlocked(edge, y, out double from, out double to))
                {
                    blocked.Add(from, to);
                    if (edge.Of is { } thing)
                    {
                        (things ??= []).Add((from, to, thing));
                    }
                }
            }
        }

        blocked.Sort();
        double free = west;
        for (int i = 0; i < blocked.Count && blocked.From[i] < east; i++)
        {
            if (blocked.From[i] >= free)
            {
                stretches.Add(new Stretch(this, free, blocked.From[i]));
            }

            free = Math.Max(free, blocked.To[i]);
        }

        if (free <= east)
        {
            stretches.Add(new Stretch(this, free, east));
        }

        blocked.GiveBack();
        return edges.Counted(bottom, top);
    }
}

/// <summary>Parts of a line that are not free, in lists that are lent.</summary>
internal struct BlockedParts
{
    private const int Usual = 256;

    public BlockedParts()
    {
    }

    public double[] From { get; private set; } = ArrayPool<double>.Shared.Rent(Usual);

    public double[] To { get; private set; } = ArrayPool<double>.Shared.Rent(Usual);

    public int Count { get; private set; }

    public void Add(double from, double to)
    {
        if (Count == Math.Min(From.Length, To.Length))
        {
            From = Longer(From);
            To = Longer(To);
        }

        (From[Count], To[Count]) = (from, to);
        Count++;
    }

    public readonly void Sort() => Array.Sort(From, To, 0, Count);

    public readonly void GiveBack()
    {
        ArrayPool<double>.Shared.Return(From);
        ArrayPool<double>.Shared.Return(To);
    }

    private static double[] Longer(double[] old)
    {
        double[] longer = ArrayPool<double>.Shared.Rent(2 * old.Length);
        old.CopyTo(longer, 0);
        ArrayPool<double>.Shared.Return(old);
        return longer;
    }
}

/// <summary>Where a rectangle slides east and west without turning.</summary>
internal sealed class Stretch(PoseRow row, double west, double east)
{
    public PoseRow Row => row;

    public double West => west;

    public double East => east;

    /// <summary>From where it was come to first, and at which place; null for a start.</summary>
    public Stretch? Before { get; set; }

    public double X { get; set; }

    public double Cost { get; set; }

    public bool IsSeen { get; set; }

    public bool IsThere { get; set; }

    public double Nearest(double x) => Math.Clamp(x, west, east);
}
