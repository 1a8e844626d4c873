using Floorplan.Model.Stations;

namespace Floorplan.Model.Space.Turning;

/// <summary>
/// Which place of a stretch is nearest to the goal, and how many mm away; 0 is there. <c>x</c> is where the stretch is come to.
/// </summary>
internal delegate (double X, double Away) Towards(double y, double west, double east, double x);

/// <summary>
/// The way of a rectangle from pose to pose: from a stretch of one line to the stretches beside it on the next line or at the next angle,
/// nearest to the goal first (A*). A step moves no point of the rectangle by more than about a step of the grid.
/// </summary>
/// <param name="notes">Whether it takes note of what is in the way.</param>
internal sealed class PoseSearch(PoseGrid grid, Towards towards, bool notes)
{
    /// <summary>The distance still to go weighs so much more than that gone: any way will do, not the shortest.</summary>
    private const double Greed = 4;

    private readonly PriorityQueue<Stretch, double> queue = new();
    private readonly HashSet<Station> touched = new(ReferenceEqualityComparer.Instance);

    /// <summary>The pose that came nearest to the goal.</summary>
    public Pose? Nearest { get; private set; }

    /// <summary>Things that kept it from going on.</summary>
    public IReadOnlyCollection<Station> Touched => touched;

    /// <summary>
    /// The poses from a start to a goal, between which it slides or turns; null when there is no way, or the effort is spent.
    /// </summary>
    public IReadOnlyList<Pose>? Find(IReadOnlyList<Spot> starts, double along, Effort effort)
    {
        foreach (var start in starts)
        {
            Start(start, along);
        }

        double least = double.MaxValue;
        while (queue.TryDequeue(out var stretch, out double order) && !effort.IsSpent)
        {
            if (stretch.IsThere)
            {
                return Poses(stretch);
            }

            if (order - stretch.Cost < least)
            {
                least = order - stretch.Cost;
                Nearest = new Pose(stretch.X, stretch.Row.Y, grid.Radians(stretch.Row.Angle));
            }

            GoOn(stretch);
        }

        return null;
    }

    private static double Apart(double dx, double dy) => Math.Sqrt((dx * dx) + (dy * dy));

    private void Start(Spot start, double along)
    {
        double radius = Math.Max(start.Radius, grid.Step);
        int most = Math.Max(1, (int)(radius / grid.Step));
        int middle = grid.LineAt(start.At.Y);
        var angles = start.Angle is { } one ? [grid.AngleAt(one)] : grid.SomeAngles(along);
        foreach (int angle in angles)
        {
            foreach (int line in new[] { 0, -most / 2, most / 2, -most, most }.Distinct().Select(l => middle + l))
            {
                foreach (var stretch in grid.Row(angle, line)?.Stretches ?? [])
                {
                    double x = stretch.Nearest(start.At.X);
                    if (!stretch.IsSeen && Apart(x - start.At.X, stretch.Row.Y - start.At.Y) <= radius)
                    {
                        Nearest ??= new Pose(x, stretch.Row.Y, grid.Radians(angle));
                        Reach(stretch, null, x, 0);
                    }
                }
            }
        }
    }

    private void GoOn(Stretch from)
    {
        for (int turn = -1; turn <= 1; turn++)
        {
            for (int up = -1; up <= 1; up++)
            {
                if ((turn != 0 || up != 0) && grid.Row(from.Row.Angle + turn, from.Row.Line + up) is { } row)
                {
                    double turned = turn == 0 ? 0 : grid.Step;
                    Cross(from, row, turned + (up == 0 ? 0 : grid.Step));
                }
            }
        }
    }

    private void Cross(Stretch from, PoseRow row, double cost)
    {
        foreach (var (west, east, thing) in notes ? row.Things : [])
        {
            if (west <= from.East + grid.Step && east >= from.West - grid.Step)
            {
                touched.Add(thing);
            }
        }

        foreach (var next in row.Stretches)
        {
            if (!next.IsSeen && next.West <= from.East + grid.Step && next.East >= from.West - grid.Step)
            {
                double x = next.Nearest(from.X);
                Reach(next, from, x, from.Cost + cost + Math.Abs(x - from.X));
            }
        }
    }

    private void Reach(Stretch stretch, Stretch? before, double x, double cost)
    {
        var (best, away) = towards(stretch.Row.Y, stretch.West, stretch.East, x);
        stretch.IsSeen = true;
        stretch.Before = before;
        stretch.X = best;
        stretch.IsThere = away <= 0;
        stretch.Cost = cost + Math.Abs(best - x);
        queue.Enqueue(stretch, stretch.Cost + (Greed * away));
    }

    private List<Pose> Poses(Stretch last)
    {
        var poses = new List<Pose>();
        double x = last.X;
        for (var stretch = last; stretch is not null; stretch = stretch.Before)
        {
            x = stretch.Nearest(x);
            poses.Add(new Pose(x, stretch.Row.Y, grid.Radians(stretch.Row.Angle)));
            if (stretch.Before is null && stretch.X != x)
            {
                poses.Add(new Pose(stretch.X, stretch.Row.Y, grid.Radians(stretch.Row.Angle)));
            }
        }

        poses.Reverse();
        return poses;
    }
}
