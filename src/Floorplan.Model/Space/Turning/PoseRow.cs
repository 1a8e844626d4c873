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

    /// <summary>Works the stretches out; gives back how many edges were looked at.</summary>
    /// <param name="itself">The thing that is moved, which is not in its own way.</param>
    public int Fill(SolidEdges edges, TurnedBox box, double west, double east, Station? itself)
    {
        int looked = 0;
        double bottom = y - box.HalfHeight, top = y + box.HalfHeight;
        var blocked = new List<(double West, double East)>();
        foreach (ref readonly var edge in edges.From(bottom))
        {
            looked++;
            if (edge.Low >= top)
            {
                break;
            }

            if (edge.High > bottom
                && (edge.Of is null || !ReferenceEquals(edge.Of, itself))
                && box.IsBlocked(edge, y, out double from, out double to))
            {
                blocked.Add((from, to));
                if (edge.Of is { } thing)
                {
                    (things ??= []).Add((from, to, thing));
                }
            }
        }

        blocked.Sort();
        double free = west;
        foreach (var (from, to) in blocked)
        {
            if (from >= east)
            {
                break;
            }

            if (from >= free)
            {
                stretches.Add(new Stretch(this, free, from));
            }

            free = Math.Max(free, to);
        }

        if (free <= east)
        {
            stretches.Add(new Stretch(this, free, east));
        }

        return looked;
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
