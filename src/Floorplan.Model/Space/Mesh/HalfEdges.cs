namespace Floorplan.Model.Space.Mesh;

/// <summary>Triangles as half-edges: improved towards Delaunay, then joined to convex cells.</summary>
internal sealed class HalfEdges
{
    /// <summary>
    /// Flips per triangle before the mesh is taken as it is; flips only make searches shorter, never righter. Own assumption.
    /// </summary>
    private const int FlipsPerTriangle = 20;

    private readonly List<GridPoint> points;
    private readonly int[] origin;
    private readonly int[] next;
    private readonly int[] twin;

    public HalfEdges(List<GridPoint> points, List<int> triangles)
    {
        this.points = points;
        origin = [.. triangles];
        next = new int[origin.Length];
        twin = new int[origin.Length];
        var byEnds = new Dictionary<(int From, int To), int>(origin.Length);
        for (int h = 0; h < origin.Length; h++)
        {
            next[h] = h % 3 == 2 ? h - 2 : h + 1;
            twin[h] = -1;
        }

        for (int h = 0; h < origin.Length; h++)
        {
            if (byEnds.Remove((origin[next[h]], origin[h]), out int other))
            {
                twin[h] = other;
                twin[other] = h;
            }
            else
            {
                byEnds[(origin[h], origin[next[h]])] = h;
            }
        }
    }

    /// <summary>
    /// Turns diagonals until no corner lies in the circle of a neighbour triangle: compact triangles make short searches.
    /// </summary>
    public void Improve()
    {
        var waiting = new Stack<int>();
        for (int h = 0; h < origin.Length; h++)
        {
            if (twin[h] > h)
            {
                waiting.Push(h);
            }
        }

        int left = FlipsPerTriangle * (origin.Length / 3);
        while (left > 0 && waiting.TryPop(out int h))
        {
            if (twin[h] < 0 || !ShouldFlip(h))
            {
                continue;
            }

            left--;
            int t = twin[h];
            int a = next[h], b = next[a], c = next[t], d = next[c];
            Flip(h, t, a, b, c, d);
            waiting.Push(a);
            waiting.Push(b);
            waiting.Push(c);
            waiting.Push(d);
        }
    }

    /// <summary>Drops diagonals while both sides stay strictly convex, and gives the cells as loops of half-edges.</summary>
    public (List<int[]> Loops, int[] Twin, int[] Origin) Merge()
    {
        var previous = new int[origin.Length];
        for (int h = 0; h < origin.Length; h++)
        {
            previous[next[h]] = h;
        }

        var gone = new bool[origin.Length];
        for (int h = 0; h < origin.Length; h++)
        {
            int t = twin[h];
            if (t < h || gone[h])
            {
                continue;
            }

            if (!Convex(previous[h], next[t]) || !Convex(previous[t], next[h]))
            {
                continue;
            }

            Link(previous[h], next[t]);
            Link(previous[t], next[h]);
            gone[h] = gone[t] = true;
        }

        return (Loops(gone), twin, origin);

        bool Convex(int into, int outOf) => GridPoint.Turn(points[origin[into]], points[origin[outOf]], points[origin[next[outOf]]]) > 0;

        void Link(int before, int after)
        {
            next[before] = after;
            previous[after] = before;
        }
    }

    private List<int[]> Loops(bool[] gone)
    {
        var loops = new List<int[]>();
        var seen = new bool[origin.Length];
        var loop = new List<int>();
        for (int h = 0; h < origin.Length; h++)
        {
            if (gone[h] || seen[h])
            {
                continue;
            }

            loop.Clear();
            for (int e = h; !seen[e]; e = next[e])
            {
                seen[e] = true;
                loop.Add(e);
            }

            loops.Add([.. loop]);
        }

        return loops;
    }

    private bool ShouldFlip(int h)
    {
        int t = twin[h];
        var a = points[origin[h]];
        var b = points[origin[t]];
        var c = points[origin[next[next[h]]]];
        var d = points[origin[next[next[t]]]];
        return GridPoint.Turn(c, d, b) > 0 && GridPoint.Turn(d, c, a) > 0 && InCircle(a, b, c, d);
    }

    /// <summary>Exact: the products of a 1 km plan at 0.01 mm stay below 1e35, well inside 128 bits.</summary>
    private static bool InCircle(GridPoint a, GridPoint b, GridPoint c, GridPoint d)
    {
        long ax = a.X - d.X, ay = a.Y - d.Y, bx = b.X - d.X, by = b.Y - d.Y, cx = c.X - d.X, cy = c.Y - d.Y;
        return ((Int128)((ax * ax) + (ay * ay)) * ((bx * cy) - (by * cx)))
            + ((Int128)((bx * bx) + (by * by)) * ((cx * ay) - (cy * ax)))
            + ((Int128)((cx * cx) + (cy * cy)) * ((ax * by) - (ay * bx))) > 0;
    }

    private void Flip(int h, int t, int a, int b, int c, int d)
    {
        // h runs p to q with apex r (a: q-r, b: r-p); t runs q to p with apex s (c: p-s, d: s-q).
        origin[h] = origin[d];
        origin[t] = origin[b];
        next[h] = b;
        next[b] = c;
        next[c] = h;
        next[t] = d;
        next[d] = a;
        next[a] = t;
    }
}
