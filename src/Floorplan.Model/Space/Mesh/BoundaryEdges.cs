namespace Floorplan.Model.Space.Mesh;

/// <summary>
/// Straight edges between grid points, each with what changes when it is stepped over from below (from the right, when it
/// stands upright): how many floors and how many solids lie there. Edges that lie on each other add up to one.
/// </summary>
internal sealed class BoundaryEdges
{
    private readonly Dictionary<(GridPoint From, GridPoint To), (int Floors, int Solids)> edges = [];

    public int Count => edges.Count;

    public IEnumerable<(GridPoint From, GridPoint To, int Floors, int Solids)> All =>
        edges.Where(e => e.Value != default).Select(e => (e.Key.From, e.Key.To, e.Value.Floors, e.Value.Solids));

    /// <summary>A ring with its inside on the left; one walked the other way round takes its inside away.</summary>
    public void AddRing(IReadOnlyList<GridPoint> ring, bool solid)
    {
        for (int i = 0; i < ring.Count; i++)
        {
            GridPoint a = ring[i], b = ring[i + 1 == ring.Count ? 0 : i + 1];
            int way = Math.Sign(b.CompareTo(a));
            if (way != 0)
            {
                Add(way > 0 ? a : b, way > 0 ? b : a, solid ? 0 : way, solid ? way : 0);
            }
        }
    }

    public void AddAll(BoundaryEdges others)
    {
        foreach (var (key, value) in others.edges)
        {
            Add(key.From, key.To, value.Floors, value.Solids);
        }
    }

    public void Add(GridPoint from, GridPoint to, int floors, int solids)
    {
        ref var value = ref System.Runtime.InteropServices.CollectionsMarshal.GetValueRefOrAddDefault(edges, (from, to), out _);
        value = (value.Floors + floors, value.Solids + solids);
    }
}
