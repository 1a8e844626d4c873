using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Turning;

/// <summary>
/// A quick look at whether a rectangle gets out of a building: held square to the plan, slid along lines and from line to line, and given a
/// quarter turn where a square as broad as its diagonal has room. It finds fewer ways than <see cref="PoseSearch"/>, and none that is not
/// there.
/// </summary>
/// <param name="box">As large as the way must be free for.</param>
internal sealed class SquareSlide(SolidEdges edges, LongBox box, Move move, Envelope building, Effort effort)
{
    /// <summary>
    /// Between lines, in mm. The rectangle is taken larger by half of it, so that what is free on two lines is free between.
    /// </summary>
    private const double Apart = 50;

    /// <summary>Long side along the lines, across them, or turning.</summary>
    private const int Level = 0, Upright = 1, Turning = 2;

    private readonly TurnedBox[] held =
    [
        new(box.Grown(Apart / 2), 0), new(box.Grown(Apart / 2), Math.PI / 2),
        new(new LongBox(box.Diagonal, box.Diagonal).Grown(Apart / 2), 0),
    ];

    private readonly Dictionary<(int Held, int Line), PoseRow> rows = [];
    private readonly PriorityQueue<Stretch, double> queue = new();

    /// <summary>Looked at for a turn when there is no way without one.</summary>
    private readonly Queue<Stretch> turns = new();

    /// <summary>Whether a way was found; false says nothing.</summary>
    public bool Leaves()
    {
        foreach (var start in move.Starts)
        {
            Start(start);
        }

        while (!effort.IsSpent)
        {
            if (queue.TryDequeue(out var stretch, out double away))
            {
                if (away <= 0)
                {
                    return true;
                }

                GoOn(stretch);
            }
            else if (turns.TryDequeue(out var other))
            {
                Cross(other, Turning, other.Row.Line);
            }
            else
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>Well within the radius: <see cref="PoseSearch"/> starts from lines of its own.</summary>
    private void Start(Spot start)
    {
        if (start.Angle is not { } angle)
        {
            return;
        }

        double radius = start.Radius / 2;
        bool isLevel = Math.Abs(Math.Sin(angle)) < Math.Abs(Math.Cos(angle));
        int line = (int)Math.Round((start.At.Y - move.Frame.MinY) / Apart);
        foreach (var stretch in Row(isLevel ? Level : Upright, line)?.Stretches ?? [])
        {
            if (start.At.Distance(new Coordinate(stretch.Nearest(start.At.X), stretch.Row.Y)) <= radius)
            {
                Reach(stretch);
            }
        }
    }

    private void GoOn(Stretch from)
    {
        Cross(from, from.Row.Angle, from.Row.Line - 1);
        Cross(from, from.Row.Angle, from.Row.Line + 1);
        if (from.Row.Angle == Turning)
        {
            Cross(from, Level, from.Row.Line);
            Cross(from, Upright, from.Row.Line);
        }
        else
        {
            turns.Enqueue(from);
        }
    }

    private void Cross(Stretch from, int how, int line)
    {
        foreach (var next in Row(how, line)?.Stretches ?? [])
        {
            if (!next.IsSeen && next.West <= from.East && next.East >= from.West)
            {
                Reach(next);
            }
        }
    }

    private void Reach(Stretch stretch)
    {
        stretch.IsSeen = true;
        double y = stretch.Row.Y;
        bool isOut = y < building.MinY || y > building.MaxY || stretch.West < building.MinX || stretch.East > building.MaxX;
        queue.Enqueue(stretch, isOut ? 0 : 1 + Nearest(stretch));
    }

    /// <summary>Mm to the nearest goal; decides the order of looking, and no more.</summary>
    private double Nearest(Stretch stretch)
    {
        double least = double.MaxValue;
        foreach (var goal in move.Goals)
        {
            least = Math.Min(least, Math.Abs(stretch.Nearest(goal.At.X) - goal.At.X) + Math.Abs(stretch.Row.Y - goal.At.Y));
        }

        return least;
    }

    /// <summary>Null off the frame.</summary>
    private PoseRow? Row(int how, int line)
    {
        double y = move.Frame.MinY + (line * Apart);
        if (line < 0 || y > move.Frame.MaxY)
        {
            return null;
        }

        if (!rows.TryGetValue((how, line), out var row))
        {
            rows[(how, line)] = row = new PoseRow(how, line, y);
            effort.Spend(row.Fill(edges, held[how], move.Frame.MinX, move.Frame.MaxX, move.Itself));
        }

        return row;
    }
}
