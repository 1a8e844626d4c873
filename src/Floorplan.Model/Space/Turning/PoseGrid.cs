using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Turning;

/// <summary>
/// Lines across a part of the plan, and angles, in which a rectangle is looked at; each is worked out when first asked for. They lie
/// alike on
/// both sides of the middle, so that a plan seen in a mirror has the same answer.
/// </summary>
internal sealed class PoseGrid
{
    /// <summary>Angles are a multiple of this, so that square to the plan, across it and halfway are among them.</summary>
    private const int AnglesBy = 12;

    private const int MostAngles = 480;

    private readonly SolidEdges edges;
    private readonly Envelope frame;
    private readonly double middle;
    private readonly Effort effort;
    private readonly Station? itself;
    private readonly TurnedBox?[] turned;
    private readonly Dictionary<long, PoseRow> rows = [];

    /// <param name="step">Between lines, and what the ends of the rectangle move from angle to angle, in mm.</param>
    public PoseGrid(SolidEdges edges, LongBox box, Move move, double step, Effort effort)
    {
        (this.edges, this.effort, frame, itself) = (edges, effort, move.Frame, move.Itself);
        middle = (frame.MinY + frame.MaxY) / 2;
        Box = box;
        Step = step;
        double turns = Math.PI * box.Length / 2 / step / AnglesBy;
        turned = new TurnedBox?[AnglesBy * (int)Math.Ceiling(Math.Clamp(turns, 1, (double)MostAngles / AnglesBy))];
    }

    public LongBox Box { get; }

    public double Step { get; }

    public int Angles => turned.Length;

    /// <summary>Angles to start at when any will do: every 15 degrees, and the one along a way.</summary>
    public IEnumerable<int> SomeAngles(double along) =>
        Enumerable.Range(0, AnglesBy).Select(i => i * Angles / AnglesBy).Append(AngleAt(along)).Distinct();

    public int AngleAt(double radians) => (((int)Math.Round(radians / Math.PI * Angles) % Angles) + Angles) % Angles;

    public double Radians(int angle) => Math.PI * angle / Angles;

    public int LineAt(double y) => (int)Math.Round((y - middle) / Step);

    /// <summary>Null off the frame.</summary>
    public PoseRow? Row(int angle, int line)
    {
        angle = (angle + Angles) % Angles;
        double y = middle + (line * Step);
        if (y < frame.MinY || y > frame.MaxY)
        {
            return null;
        }

        long key = ((long)line * Angles) + angle;
        if (!rows.TryGetValue(key, out var row))
        {
            rows[key] = row = new PoseRow(angle, line, y);
            effort.Spend(row.Fill(edges, turned[angle] ??= new TurnedBox(Box, Radians(angle)), frame.MinX, frame.MaxX, itself));
        }

        return row;
    }
}

/// <summary>
/// Bounds the work of all searches on a plan together, whatever its size. Counted in edges looked at, so that the answer is the same on
/// any machine.
/// </summary>
public sealed class Effort(long most)
{
    /// <summary>What a row costs besides, in edges.</summary>
    private const int Row = 100;

    private long left = most;

    public bool IsSpent => left <= 0;

    internal void Spend(int edges)
    {
        Steps.Take(edges + Row);
        left -= edges + Row;
    }

    /// <summary>A part of what is left, for one question; <see cref="Settle"/> takes off here what it spent.</summary>
    internal Effort Share(long most) => new(Math.Min(most, left));

    internal void Settle(Effort share, long most) => left -= Math.Min(most, left) - share.left;
}
