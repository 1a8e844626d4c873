namespace Floorplan.Model.Space.Mesh;

/// <summary>
/// Cuts the floor between closed rings into triangles that use only the rings' own corners. One sweep from west to east
/// (after Hertel and Mehlhorn 1983): each open stretch of floor keeps the chain of corners that still see east. Cost is
/// n log n, also with thousands of holes. Inside is where an odd number of edges lies below.
/// </summary>
internal sealed class SweepTriangulator
{
    private readonly List<GridPoint> points = [];
    private readonly List<(int Left, int Right)> edges = [];
    private readonly List<int> active = [];
    private readonly List<int> triangles = [];
    private readonly ChainStore chains = new();
    private int[] above = [];

    private SweepTriangulator()
    {
    }

    /// <summary>Corners and triangles (three corner numbers each, anticlockwise), or null when the rings cross each other.</summary>
    public static (List<GridPoint> Points, List<int> Triangles)? Cut(IEnumerable<IReadOnlyList<GridPoint>> rings)
    {
        var cut = new SweepTriangulator();
        cut.Read(rings);
        return cut.Sweep() ? (cut.points, cut.triangles) : null;
    }

    private void Read(IEnumerable<IReadOnlyList<GridPoint>> rings)
    {
        var numbers = new Dictionary<GridPoint, int>();
        var seen = new HashSet<(int, int)>();
        foreach (var ring in rings)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                int a = Number(ring[i]), b = Number(ring[(i + 1) % ring.Count]);
                if (a == b)
                {
                    continue;
                }

                var edge = points[a].CompareTo(points[b]) < 0 ? (a, b) : (b, a);

                // An edge walked twice has floor on both sides or on neither: it bounds nothing.
                if (!seen.Add(edge))
                {
                    seen.Remove(edge);
                }
            }
        }

        edges.AddRange(seen);

        int Number(GridPoint p)
        {
            if (!numbers.TryGetValue(p, out int n))
            {
                n = points.Count;
                numbers.Add(p, n);
                points.Add(p);
            }

            return n;
        }
    }

    private bool Sweep()
    {
        above = new int[edges.Count];
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
        else if (outgoing.Count == 0)
        {
            // A corner whose edges were all walked twice.
            return true;
        }
        else
        {
            (bottom, top) = Split(bottom, v);
        }

        return Replace(low, high, outgoing, bottom, top, v);
    }

    private bool Replace(int low, int high, List<int> outgoing, int bottom, int top, int v)
    {
        bool inside = bottom != ChainStore.None;
        if ((top != ChainStore.None) != (inside ^ (outgoing.Count % 2 == 1)))
        {
            return false;
        }

        active.RemoveRange(low, high - low);
        active.InsertRange(low, outgoing);
        for (int i = 0; i < outgoing.Count - 1; i++)
        {
            inside = !inside;
            above[outgoing[i]] = inside ? chains.New(v) : ChainStore.None;
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
