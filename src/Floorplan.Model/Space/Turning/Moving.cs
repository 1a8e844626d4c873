using Floorplan.Model.Shapes;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Turning;

/// <summary>What is asked of a rigid rectangle: slid in any direction and turned, as on castors or carried.</summary>
/// <param name="Frame">Its middle stays in here.</param>
/// <param name="Starts">It starts at any of them.</param>
/// <param name="Goals">It should come to any of them.</param>
/// <param name="Along">The angle at which it most likely starts, radians; lines are looked at from west to east or from south to north,
/// whichever is nearer to it.</param>
public sealed record Move(LongBox Box, Envelope Frame, IReadOnlyList<Spot> Starts, IReadOnlyList<Spot> Goals, double Along = 0)
{
    /// <summary>
    /// Mm from a place to the goal as the way leads there, and 0 where it is reached; null takes <see cref="Goals"/> and the straight
    /// line.
    /// </summary>
    public Func<double, double, double>? Away { get; init; }

    internal Move Crossed
        => new(
            Box, new Envelope(Frame.MinY, Frame.MaxY, Frame.MinX, Frame.MaxX), [.. Starts.Select(s => s.Crossed)],
            [.. Goals.Select(s => s.Crossed)], Pose.Cross(Along))
        {
            Away = Away is { } away ? (x, y) => away(y, x) : null,
            Itself = Itself,
        };

    /// <summary>The thing that is moved: its own edges are not in its way.</summary>
    public Station? Itself { get; init; }
}

/// <param name="Goes">False only when no way was found with the rectangle taken a little too small.</param>
/// <param name="IsSure">False when the search was not carried to its end, and the answer is the kind one.</param>
/// <param name="HasRoom">It passes even taken too large, so that no tolerance is in the answer.</param>
/// <param name="Poses">From start to goal; empty when there is no way or the answer is not sure.</param>
/// <param name="Nearest">The pose that came nearest to the goal; null when there was none to start from.</param>
/// <param name="Touched">Things that kept it from going on, when it does not pass.</param>
public sealed record Moved(
    bool Goes, bool IsSure, bool HasRoom, IReadOnlyList<Pose> Poses, Pose? Nearest, IReadOnlyCollection<Station> Touched)
{
    /// <summary>The floor that it sweeps, from pose to pose.</summary>
    public Geometry Swept(LongBox box)
    {
        var outlines = Poses.Select(p => (Geometry)p.Outline(box)).ToList();
        var steps = outlines.Count == 1
            ? outlines
            : [.. outlines.Zip(outlines.Skip(1), (a, b) => Shape.Factory.BuildGeometry([a, b]).ConvexHull())];
        return Overlays.Sum(steps);
    }
}

/// <summary>
/// Whether a rectangle can be moved past edges. Looked at with a coarse step first: what passes taken too large passes, what does not
/// taken too
/// small does not, and only what lies between is looked at with a finer one. At the finest step it is taken too small, so that the answer
/// errs to the kind side: what it says is stuck is stuck, and what it lets pass may be too large by <see cref="Tolerance"/> on every side.
/// </summary>
public sealed class Moving(SolidEdges edges, double finest, Effort effort)
{
    /// <summary>
    /// A step that goes round a corner of the rectangle may cut in by this part of the step: three moves of a step at most, over root
    /// 8.
    /// </summary>
    private const double CutIn = 0.85;

    /// <summary>A free place between lines lies at most this part of a step off one; half a step across, and half at a slant.</summary>
    private const double Missed = 0.75;

    /// <summary>Longer things are looked at with coarser steps: their ends move by a part of their length. Own bound.</summary>
    private const double LeastPartOfLength = 1 / 250.0;

    /// <summary>In finest steps.</summary>
    private const int SecondStep = 2;

    /// <summary>
    /// One look at a question takes no more of the effort than this, and there are three at most besides short ones; own bound.
    /// </summary>
    public long MostOnce { get; init; } = 1_500_000;

    /// <summary>In mm on every side for this rectangle.</summary>
    public double Tolerance(LongBox box) => Finest(box) * (CutIn + Missed);

    /// <summary>
    /// A quick look at whether it gets out of a building: where this says so, <see cref="Go"/> finds that it goes and has room, at its
    /// second step at the latest. False says nothing.
    /// </summary>
    /// <param name="move">The goals are doors to look at first.</param>
    /// <param name="building">It is out when its middle is out of here.</param>
    public bool LeavesSquare(Move move, Envelope building)
    {
        if (IsAcross(move))
        {
            var crossed = new Envelope(building.MinY, building.MaxY, building.MinX, building.MaxX);
            return new Moving(edges.Crossed, finest, effort) { MostOnce = MostOnce }.LeavesSquare(move.Crossed, crossed);
        }

        double step = SecondStep * Finest(move.Box);
        var share = effort.Share(MostOnce);
        var box = move.Box.Grown(step * (CutIn + Missed));
        bool leaves = new SquareSlide(edges, box, move with { Starts = Roomy(move, step) }, building, share).Leaves();
        effort.Settle(share, MostOnce);
        return leaves;
    }

    public Moved Go(Move move)
    {
        if (effort.IsSpent)
        {
            return new Moved(true, false, false, [], null, []);
        }

        if (IsAcross(move))
        {
            var crossed = new Moving(edges.Crossed, finest, effort) { MostOnce = MostOnce }.Go(move.Crossed);
            return crossed with { Poses = [.. crossed.Poses.Select(p => p.Crossed)], Nearest = crossed.Nearest?.Crossed };
        }

        return Refine(move);
    }

    /// <summary>To the nearest spot; where a stretch comes within its radius, or within a step of it, it is there.</summary>
    private static Towards Straight(IReadOnlyList<Spot> goals, double step) => (y, west, east, _) =>
    {
        (double X, double Away) best = (west, double.MaxValue);
        foreach (var goal in goals)
        {
            double x = Math.Clamp(goal.At.X, west, east);
            double away = goal.At.Distance(new Coordinate(x, y));
            best = away <= Math.Max(goal.Radius, step) ? (x, 0) : away < best.Away ? (x, away) : best;
            if (best.Away == 0)
            {
                break;
            }
        }

        return best;
    };

    /// <summary>A stretch is looked at in some places only; which is taken decides the order of looking, and no more.</summary>
    private static Towards Guided(Func<double, double, double> away)
    {
        const double Apart = 500;
        const int MostPlaces = 12;
        return (y, west, east, x) =>
        {
            (double X, double Away) best = (x, away(x, y));
            int places = (int)Math.Min(MostPlaces, Math.Ceiling((east - west) / Apart));
            for (int i = 0; i <= places && best.Away > 0; i++)
            {
                double at = places == 0 ? west : west + ((east - west) * i / places);
                double mm = away(at, y);
                best = mm <= 0 || mm + Math.Abs(at - x) < best.Away + Math.Abs(best.X - x) ? (at, mm) : best;
            }

            return best;
        };
    }

    private static bool IsAcross(Move move) => Math.Abs(Math.Sin(move.Along)) > Math.Abs(Math.Cos(move.Along)) + 1e-9;

    private double Finest(LongBox box) => Math.Max(finest, box.Length * LeastPartOfLength);

    /// <summary>
    /// Most things pass, and most with room to spare: that is looked at before what does not pass at all. A coarse look that takes too
    /// long says
    /// nothing, and a finer one follows.
    /// </summary>
    private Moved Refine(Move move)
    {
        double finest = Finest(move.Box);
        foreach (var (steps, tooLarge) in new[] { (4, true), (SecondStep, true), (4, false), (SecondStep, false) })
        {
            double step = steps * finest;
            var moved = tooLarge
                ? Look(move with { Starts = Roomy(move, step) }, move.Box.Grown(step * CutIn), step, MostOnce / (2 * steps))
                : Look(move, move.Box.Grown(-step * Missed), step, MostOnce);
            if (moved.IsSure && moved.Goes == tooLarge)
            {
                return moved;
            }
        }

        var last = Look(move, move.Box.Grown(-finest * Missed), finest, MostOnce);
        return last.IsSure ? last : last with { Goes = true };
    }

    /// <summary>
    /// Too large, it does not fit where it stands against a wall or between others: it starts a little off, or where it can be drawn out to
    /// along one of its own sides. No farther off than its width, so that it is on no other side of a wall.
    /// </summary>
    private List<Spot> Roomy(Move move, double step)
    {
        var box = move.Box.Grown(-Finest(move.Box) * Missed);
        double radius = Math.Min(2 * step, move.Box.Width);
        var spots = new List<Spot>();
        foreach (var start in move.Starts)
        {
            spots.Add(start with { Radius = Math.Max(start.Radius, radius) });
            if (start.Angle is not { } angle)
            {
                continue;
            }

            foreach (var (turn, side, other) in new[] { (0, box.Length, box.Width), (Math.PI / 2, box.Width, box.Length) })
            {
                foreach (double drawn in new[] { side / 2, side + (2 * step), -side / 2, -side - (2 * step) })
                {
                    var (sin, cos) = Math.SinCos(angle + turn);
                    var middle = new Coordinate(start.At.X + (cos * drawn / 2), start.At.Y + (sin * drawn / 2));
                    if (edges.IsFree(new LongBox(side + Math.Abs(drawn), other), middle, side + Math.Abs(drawn) >= other
                        ? angle + turn
                        : angle + turn + (Math.PI / 2), move.Itself))
                    {
                        spots.Add(new Spot(new(start.At.X + (cos * drawn), start.At.Y + (sin * drawn)), radius, angle));
                    }
                }
            }
        }

        return spots;
    }

    private Moved Look(Move move, LongBox box, double step, long most)
    {
        var share = effort.Share(most);
        var search =
            new PoseSearch(new PoseGrid(edges, box, move, step, share), move.Away is { } away
                ? Guided(away)
                : Straight(move.Goals, step), box.Width < move.Box.Width);
        var poses = search.Find(move.Starts, move.Along, share);
        effort.Settle(share, most);
        return new Moved(poses is not null, poses is not null
            || !share.IsSpent, poses is not null
            && box.Width > move.Box.Width, poses ?? [], search.Nearest, search.Touched);
    }
}
