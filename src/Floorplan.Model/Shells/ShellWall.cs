using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Model.Openings;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Shells;

/// <summary>One straight outside wall of a shell, in plan coordinates.</summary>
/// <param name="Side">The side that it faces.</param>
/// <param name="From">West or south end.</param>
/// <param name="At">Place of its outside face across the wall.</param>
public sealed record ShellWall(Side Side, Length From, Length To, Length At)
{
    public bool RunsEastWest => Side.RunsEastWest();

    public Length Run => To - From;

    /// <summary>South, north, west, then east; walls that face the same way from the outermost in.</summary>
    public static IReadOnlyList<ShellWall> Of(Shell shell) => Of(shell.Outside);

    /// <summary>Its finished inside face, end to end; itself where the shell has none there.</summary>
    public ShellWall FinishedIn(Shell shell) => Of(shell.Finished)
        .Where(f => f.Side == Side && f.From < To && f.To > From)
        .OrderBy(f => Length.Abs(f.At - At))
        .FirstOrDefault(this);

    private static IReadOnlyList<ShellWall> Of(Polygon outline)
    {
        var ring = outline.ExteriorRing.Coordinates;
        bool counterClockwise = NetTopologySuite.Algorithm.Orientation.IsCCW(ring);
        var walls = new List<ShellWall>();
        for (int i = 0; i + 1 < ring.Length; i++)
        {
            var (a, b) = counterClockwise ? (ring[i], ring[i + 1]) : (ring[i + 1], ring[i]);
            bool alongX = Math.Abs(b.X - a.X) > Math.Abs(b.Y - a.Y);
            double along = alongX ? b.X - a.X : b.Y - a.Y;
            if (Math.Abs(along) < 1e-6)
            {
                continue;
            }

            // Walked counter-clockwise, the outside is to the right.
            var side = alongX ? (along > 0 ? Side.South : Side.North) : along > 0 ? Side.East : Side.West;
            var (low, high) = alongX ? (Math.Min(a.X, b.X), Math.Max(a.X, b.X)) : (Math.Min(a.Y, b.Y), Math.Max(a.Y, b.Y));
            walls.Add(
                new ShellWall(side, Length.FromMillimetres(low), Length.FromMillimetres(high), Length.FromMillimetres(alongX ? a.Y : a.X)));
        }

        return [.. walls.OrderBy(w => Array.IndexOf(Order, w.Side)).ThenBy(w => w.Side is Side.South or Side.West ? w.At : -w.At)
            .ThenBy(w => w.From)];
    }

    /// <summary><c>north wall</c>, or <c>north wall 2</c> where a shed has several that face the same way, the outermost first.</summary>
    public string NameIn(Shell shell)
    {
        var alike = Of(shell).Where(w => w.Side == Side).ToList();
        return alike.Count < 2 ? $"{Side.Word()} wall" : FormattableString.Invariant($"{Side.Word()} wall {alike.IndexOf(this) + 1}");
    }

    /// <summary>True when the opening is cut in this wall; a shed may have two walls that face the same way.</summary>
    public bool Holds(Opening opening)
    {
        var reveal = opening.Reveal.EnvelopeInternal;
        var (from, to, low, high) = RunsEastWest
            ? (reveal.MinX, reveal.MaxX, reveal.MinY, reveal.MaxY)
            : (reveal.MinY, reveal.MaxY, reveal.MinX, reveal.MaxX);
        return opening.Wall == Side && from >= From.Millimetres - Touching && to <= To.Millimetres + Touching
            && At.Millimetres >= low - Touching && At.Millimetres <= high + Touching;
    }

    private const double Touching = 1;

    private static readonly Side[] Order = [Side.South, Side.North, Side.West, Side.East];
}
