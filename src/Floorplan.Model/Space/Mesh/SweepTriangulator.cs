namespace Floorplan.Model.Space.Mesh;

/// <summary>
/// Cuts free floor into triangles that use only the corners of its edges. One sweep from west to east (after Hertel and
/// Mehlhorn 1983): each free stretch keeps the chain of corners that still see east. Cost is n log n, also with thousands of
/// holes. Free is where at least one floor and no solid lies, so that nothing needs to be united or taken away beforehand.
/// </summary>
internal sealed class SweepTriangulator
{
    private readonly List<GridPoint> points = [];
    private readonly List<(int Left, int Right, int Floors, int Solids)> edges = [];
    private readonly List<int> active = [];
    private readonly List<int> triangles = [];
    private readonly ChainStore chains = new();
    private int[] above = [];
    private (int Floors, int Solids)[] layers = [];

    private SweepTriangulator()
    {
    }

    /// <summary>Corners and triangles (three corner numbers each, anticlockwise), or null when the edges cross each other.</summary>
    public static (List<GridPoint> Points, List<int> Triangles)? Cut(BoundaryEdges boundary)
    {
        var cut = Read(boundary);
        return cut.Sweep() ? (cut.points, cut.triangles) : null;
    }

    /// <summary>
    /// The edges between solid and not solid, or null when the edges cross each other; those inside a heap of solids are gone.
    /// </summary>
    public static BoundaryEdges? Outline(BoundaryEdges solids)
    {
        var cut = Read(solids);
        if (!cut.Sweep())
        {
            return null;
        }

        var outline = new BoundaryEdges();
        for (int e = 0; e < cut.edges.Count; e++)
        {
            var (left, right, _, change) = cut.edges[e];
            int over = cut.layers[e].Solids > 0 ? 1 : 0, under = cut.layers[e].Solids - change > 0 ? 1 : 0;
            if (over != under)
            {
                outline.Add(cut.points[left], cut.points[right], 0, over - under);
            }
        }

        return outline;
    }

    private static SweepTriangulator Read(BoundaryEdges boundary)
    {
        var cut = new SweepTriangulator();
        var numbers = new Dictionary<GridPoint, int>();
        foreach (var (from, to, floors, solids) in boundary.All)
        {
            cut.edges.Add((Number(from), Number(to), floors, solids));
        }

        return cut;

        int Number(GridPoint p)
        {
            if (!numbers.TryGetValue(p, out int n))
            {
                n = cut.points.Count;
                numbers.Add(p, n);
                cut.points.Add(p);
            }

            return n;
        }
    }

    private bool Sweep()
    {
        above = new int[edges.Count];
        layers = new (int, int)[edges.Count];
        var leaving = new List<int>[points.Count];
        for (int e = 0; e < edges.Count; e++)
        {
            (leaving[edges[e].Left] ??= []).Add(e);
        }

        var order = Enumerable.Range(0, points.Count).ToArray();
        Array.Sort(order, (a, b) => points[a].CompareTo(points[b]));
        foreach (int v in order)
        {
            var outgoing = leaving[v] ?? [];
            outgoing.Sort((e, f) => Math.Sign(GridPoint.Turn(points[v], points[edges[f].Right], points[edges[e].Right])));
            if (!Visit(v, outgoing))
            {
                return false;
            }
        }

        return active.Count == 0;
    }

    private bool Visit(int v, List<int> outgoing)
    {
        int low = FirstNotBelow(v);
        int high = low;
        while (high < active.Count && edges[active[high]].Right == v)
        {
            high++;
        }

        if (high < active.Count && Side(active[high], v) >= 0)
        {
            return false;
        }

        int bottom = low > 0 ? above[active[low - 1]] : ChainStore.None;
        int top;
        if (high > low)
        {
            for (int i = low; i < high - 1; i++)
            {
                Close(above[active[i]], v);
            }

            top = above[active[high - 1]];
            AddTop(bottom, v);
            AddBottom(top, v);
        }
        else
        {
            (bottom, top) = Split(bottom, v);
        }

        return Replace(low, high, outgoing, bottom, top, v);
    }

    private bool Replace(int low, int high, List<int> outgoing, int bottom, int top, int v)
    {
        var (floors, solids) = low > 0 ? layers[active[low - 1]] : default;
        active.RemoveRange(low, high - low);
        active.InsertRange(low, outgoing);
        for (int i = 0; i < outgoing.Count; i++)
        {
            int e = outgoing[i];
            (floors, solids) = layers[e] = (floors + edges[e].Floors, solids + edges[e].Solids);
            if (i < outgoing.Count - 1)
            {
                above[e] = floors > 0 && solids <= 0 ? chains.New(v) : ChainStore.None;
            }
        }

        // What lies above all edges of a corner does not change there; otherwise some edge has crossed another.
        if ((top != ChainStore.None) != (floors > 0 && solids <= 0))
        {
            return false;
        }

        if (outgoing.Count > 0)
        {
            above[outgoing[^1]] = top;
        }
        else if (bottom != ChainStore.None)
        {
            bottom = chains.Join(bottom, top);
        }

        if (low > 0)
        {
            above[active[low - 1]] = bottom;
        }

        return true;
    }

    private int FirstNotBelow(int v)
    {
        int low = 0, high = active.Count;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (Side(active[middle], v) > 0)
            {
                low = middle + 1;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    private long Side(int edge, int v) => GridPoint.Turn(points[edges[edge].Left], points[edges[edge].Right], points[v]);

    private bool Emit(int lower, int v, int upper)
    {
        if (GridPoint.Turn(points[lower], points[v], points[upper]) <= 0)
        {
            return false;
        }

        triangles.Add(lower);
        triangles.Add(v);
        triangles.Add(upper);
        return true;
    }

    private void Close(int chain, int v)
    {
        for (int n = chains.Bottom(chain); n >= 0 && chains.Up(n) >= 0; n = chains.Up(n))
        {
            Emit(chains.Corner(n), v, chains.Corner(chains.Up(n)));
        }
    }

    private void AddTop(int chain, int v)
    {
        if (chain == ChainStore.None)
        {
            return;
        }

        while (chains.Down(chains.Top(chain)) is int below and >= 0 && Emit(chains.Corner(below), v, chains.Corner(chains.Top(chain))))
        {
            chains.DropTop(chain);
        }

        chains.PushTop(chain, v);
    }

    private void AddBottom(int chain, int v)
    {
        if (chain == ChainStore.None)
        {
            return;
        }

        while (chains.Up(chains.Bottom(chain)) is int next and >= 0 && Emit(chains.Corner(chains.Bottom(chain)), v, chains.Corner(next)))
        {
            chains.DropBottom(chain);
        }

        chains.PushBottom(chain, v);
    }

    private (int Bottom, int Top) Split(int chain, int v)
    {
        if (chain == ChainStore.None)
        {
            return (ChainStore.None, ChainStore.None);
        }

        int upper = chains.SplitAtLast(chain);
        AddTop(chain, v);
        AddBottom(upper, v);
        return (chain, upper);
    }
}
