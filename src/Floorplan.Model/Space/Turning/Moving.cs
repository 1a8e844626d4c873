using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.OverlayNG;

namespace Floorplan.Model.Space.Turning;

/// <summary>What is asked of a rigid rectangle: slid in any direction and turned, as on castors or carried.</summary>
/// <param name="Frame">Its middle stays in here.</param>
/// <param name="Starts">It starts at any of them.</param>
/// <param name="Goals">It should come to any of them.</param>
/// <param name="Along">The angle at which it most likely starts, radians.</param>
public sealed record Move(LongBox Box, Envelope Frame, IReadOnlyList<Spot> Starts, IReadOnlyList<Spot> Goals, double Along = 0)
{
    /// <summary>Mm from a place to the goal as the way leads there, to look there first; null takes the straight line.</summary>
    public Func<double, double, double>? Away { get; init; }
}

/// <param name="Goes">False only when no way was found with the rectangle taken a little too small.</param>
/// <param name="IsSure">False when the search was not carried to its end, and the answer is the kind one.</param>
/// <param name="Poses">From start to goal; empty when there is no way or the answer is not sure.</param>
/// <param name="Nearest">The pose that came nearest to the goal; null when there was none to start from.</param>
/// <param name="Touched">Things that kept it from going on.</param>
public sealed record Moved(bool Goes, bool IsSure, IReadOnlyList<Pose> Poses, Pose? Nearest, IReadOnlyCollection<Station> Touched)
{
    /// <summary>The floor that it sweeps, from pose to pose.</summary>
    public Geometry Swept(LongBox box)
    {
        var outlines = Poses.Select(p => (Geometry)p.Outline(box)).ToList();
        var steps = outlines.Count == 1 ? outlines : [.. outlines.Zip(outlines.Skip(1), (a, b) => Shape.Factory.BuildGeometry([a, b]).ConvexHull())];
        return OverlayNGRobust.Union(Shape.Factory.BuildGeometry(steps));
    }
}

/// <summary>
/// Whether a rectangle can be moved past edges. Looked at with a coarse step first: what passes taken too large passes, what does not taken too
/// small does not, and only what lies between is looked at with a finer one. At the finest step it is taken too small, so that the answer
/// errs to the kind side: what it says is stuck is stuck, and what it lets pass may be too large by <see cref="Tolerance"/> on every side.
/// </summary>
public sealed class Moving(SolidEdges edges, double finest, Effort effort)
{
    /// <summary>A step that goes round a corner of the rectangle may cut in by this part of the step: three moves of a step at most, over root 8.</summary>
    private const double CutIn = 0.85;

    /// <summary>A free place between lines lies at most this part of a step off one; half a step across, and half at a slant.</summary>
    private const double Missed = 0.75;

    /// <summary>Longer things are looked at with coarser steps: their ends move by a part of their length. Own bound.</summary>
    private const double LeastPartOfLength = 1 / 250.0;

    /// <summary>One question takes no more of the effort than this; own bound.</summary>
    public long MostOnce { get; init; } = 2_000_000;

    /// <summary>In mm on every side for this rectangle.</summary>
    public double Tolerance(LongBox box) => Finest(box) * (CutIn + Missed);

    public Moved Go(Move move)
    {
        if (effort.IsSpent)
        {
            return new Moved(true, false, [], null, []);
        }

        var share = effort.Share(MostOnce);
        var moved = Go(move, share);
        effort.Settle(share, MostOnce);
        return moved;
    }

    private static Towards Straight(IReadOnlyList<Spot> goals) => (y, west, east, _) =>
    {
        (double X, double Away) best = (west, double.MaxValue);
        foreach (var goal in goals)
        {
            double x = Math.Clamp(goal.At.X, west, east);
            double away = Math.Sqrt(((x - goal.At.X) * (x - goal.At.X)) + ((y - goal.At.Y) * (y - goal.At.Y)));
            best = away < best.Away ? (x, away) : best;
        }

        return best;
    };

    private static Towards Guided(Func<double, double, double> away)
    {
        // A long stretch is looked at in some places only; which one is taken decides nothing but the order.
        const int Places = 8;
        return (y, west, east, x) =>
        {
            (double X, double Away) best = (x, away(x, y));
            double from = Math.Max(west, x - 4000), to = Math.Min(east, x + 4000);
            for (int i = 0; i <= Places; i++)
            {
                double at = from + ((to - from) * i / Places);
                double mm = away(at, y);
                best = mm + Math.Abs(at - x) < best.Away + Math.Abs(best.X - x) ? (at, mm) : best;
            }

            return best;
        };
    }

    private double Finest(LongBox box) => Math.Max(finest, box.Length * LeastPartOfLength);

    private Moved Go(Move move, Effort share)
    {
        for (double step = Finest(move.Box) * 4; ; step /= 2)
        {
            var generous = Look(move, move.Box.Grown(step * CutIn), step, share);
            if (generous.Goes)
            {
                return generous;
            }

            var mean = Look(move, move.Box.Grown(-step * Missed), step, share);
            if (share.IsSpent)
            {
                return mean with { Goes = true, IsSure = false, Poses = [] };
            }

            if (!mean.Goes || step <= Finest(move.Box))
            {
                return mean;
            }
        }
    }

    private Moved Look(Move move, LongBox box, double step, Effort share)
    {
        var search = new PoseSearch(new PoseGrid(edges, box, move.Frame, step, share), move.Away is { } away ? Guided(away) : Straight(move.Goals));
        var poses = search.Find(move.Starts, move.Goals, move.Along, share);
        return new Moved(poses is not null, true, poses ?? [], search.Nearest, search.Touched);
    }
}
