using Floorplan.Model.Openings;
using Floorplan.Model.Space.Free;
using Floorplan.Model.Stations;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Turning;

/// <summary>
/// A straight edge that nothing moves across; of a thing, or of a wall when there is none. In numbers, since it is looked at very
/// often.
/// </summary>
public readonly record struct SolidEdge(double AX, double AY, double BX, double BY, Station? Of)
{
    public SolidEdge(Coordinate a, Coordinate b, Station? of)
        : this(a.X, a.Y, b.X, b.Y, of)
    {
    }

    public double Low => Math.Min(AY, BY);

    public double High => Math.Max(AY, BY);
}

/// <summary>The edges of walls and of things that stand, lowest on the plan first, so that a strip across the plan finds its own.</summary>
public sealed class SolidEdges
{
    /// <summary>
    /// Edges up to so many mm tall lie together, then those up to twice as many, and so on: one long wall would have a strip look at every
    /// edge below it.
    /// </summary>
    private const double Short = 250;

    /// <summary>So few are looked at all together faster.</summary>
    private const int Few = 250;

    private readonly EdgeTier all;
    private readonly EdgeTier[] tiers;
    private SolidEdges? crossed;

    public SolidEdges(IEnumerable<SolidEdge> edges)
    {
        all = new EdgeTier([.. edges.OrderBy(e => e.Low)]);
        tiers = all.Edges.Length <= Few ? [all] :
        [
            .. all.Edges.GroupBy(e => Math.Ceiling(Math.Log2(Math.Max(1, (e.High - e.Low) / Short)))).Select(g => new EdgeTier([.. g])),
        ];
    }

    /// <summary>Each sorted by its lowest end.</summary>
    internal ReadOnlySpan<EdgeTier> Tiers => tiers;

    /// <summary>With east and north changed over.</summary>
    internal SolidEdges Crossed
        => crossed ??= new SolidEdges(all.Edges.Select(e => new SolidEdge(e.AY, e.AX, e.BY, e.BX, e.Of))) { crossed = this };

    /// <summary>Faces of all walls, with holes where <paramref name="isOpen"/>; the ground outside is free.</summary>
    public static IEnumerable<SolidEdge> OfWalls(Plan plan, Func<Opening, bool> isOpen) =>
        Walls.Of(plan, [.. plan.Openings.Select((o, i) => new Passage(o, i)).Where(p => isOpen(p.Opening))])
            .Select(p => new SolidEdge(p.A, p.B, null));

    public static IEnumerable<SolidEdge> OfThings(IEnumerable<Station> things)
    {
        foreach (var thing in things)
        {
            var corners = thing.Footprint.ExteriorRing.Coordinates;
            for (int i = 0; i + 1 < corners.Length; i++)
            {
                yield return new SolidEdge(corners[i], corners[i + 1], thing);
            }
        }
    }

    /// <summary>Those that come into a box, so that a search on a small part of a plan costs no more on a large one.</summary>
    public SolidEdges Within(Envelope box)
        => new(Near(box.MinY, box.MaxY).Where(e => box.Intersects(new Envelope(e.AX, e.BX, e.AY, e.BY))));

    /// <summary>Whether no edge comes into a rectangle.</summary>
    /// <param name="angle">Of its long side, radians.</param>
    internal bool IsFree(LongBox box, Coordinate middle, double angle, Station? itself)
    {
        var row = new PoseRow(0, 0, middle.Y);
        row.Fill(this, new TurnedBox(box, ((angle % Math.PI) + Math.PI) % Math.PI), middle.X, middle.X, itself);
        return row.Stretches.Count > 0;
    }

    /// <summary>What a look at a strip counts: all edges that begin in it, or below it by no more than the tallest.</summary>
    internal int Counted(double bottom, double top)
    {
        var (first, end) = all.Range(bottom, top);
        return end - first + (end < all.Edges.Length ? 1 : 0);
    }

    private List<SolidEdge> Near(double bottom, double top)
    {
        var near = new List<SolidEdge>();
        foreach (var edge in all.Edges.AsSpan(all.Range(bottom, top).First))
        {
            if (edge.Low > top)
            {
                break;
            }

            near.Add(edge);
        }

        return near;
    }
}

/// <summary>Edges that reach about as far up the plan as each other, lowest first.</summary>
internal sealed class EdgeTier
{
    private readonly double[] low;

    /// <summary>An edge that begins lower than this below a strip cannot reach it.</summary>
    private readonly double tallest;

    public EdgeTier(SolidEdge[] edges)
    {
        Edges = edges;
        low = Array.ConvertAll(edges, e => e.Low);
        foreach (var edge in edges)
        {
            tallest = Math.Max(tallest, edge.High - edge.Low);
        }
    }

    public SolidEdge[] Edges { get; }

    /// <summary>Those that may reach above <paramref name="bottom"/> and begin below <paramref name="top"/>.</summary>
    public (int First, int End) Range(double bottom, double top)
    {
        int first = FirstFrom(bottom - tallest);
        return (first, Math.Max(first, FirstFrom(top)));
    }

    private int FirstFrom(double height)
    {
        int first = Array.BinarySearch(low, height);
        first = first < 0 ? ~first : first;
        while (first > 0 && low[first - 1] >= height)
        {
            first--;
        }

        return first;
    }
}
