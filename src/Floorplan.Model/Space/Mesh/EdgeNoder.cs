namespace Floorplan.Model.Space.Mesh;

/// <summary>
/// Cuts edges where they meet, so that they share only ends. Crossings go to the nearest grid point; an edge that passes a
/// corner within half a grid step goes through it. Cutting moves edges a little, so it is repeated until nothing meets.
/// </summary>
internal static class EdgeNoder
{
    /// <summary>Rounds before a coarser grid is tried; plans settle in two or three. Own assumption.</summary>
    private const int Rounds = 12;

    /// <summary>Null when the edges do not settle.</summary>
    public static BoundaryEdges? Node(BoundaryEdges edges)
    {
        HashSet<(GridPoint, GridPoint)>? fresh = null;
        for (int round = 0; round < Rounds; round++)
        {
            var list = edges.All.ToArray();
            var cuts = Cuts(list, fresh);
            if (cuts is null)
            {
                return edges;
            }

            (edges, fresh) = Cut(list, cuts);
        }

        return null;
    }

    private static (
        BoundaryEdges Edges, HashSet<(GridPoint, GridPoint)> Fresh) Cut((GridPoint From, GridPoint To, int Floors, int Solids)[] list,
        List<GridPoint>?[] cuts)
    {
        var cut = new BoundaryEdges();
        var fresh = new HashSet<(GridPoint, GridPoint)>();
        for (int i = 0; i < list.Length; i++)
        {
            var (from, to, floors, solids) = list[i];
            if (cuts[i] is { } points)
            {
                // Every cut lies between the ends in both directions, or half a step beside, so this order runs along the edge.
                double dx = to.X - from.X, dy = to.Y - from.Y;
                points.Sort((p, q) => (((p.X - from.X) * dx) + ((p.Y - from.Y) * dy))
                    .CompareTo(((q.X - from.X) * dx) + ((q.Y - from.Y) * dy)));
                foreach (var p in points.Append(to))
                {
                    Piece(from, p, floors, solids);
                    from = p;
                }
            }
            else
            {
                cut.Add(from, to, floors, solids);
            }
        }

        return (cut, fresh);

        void Piece(GridPoint a, GridPoint b, int floors, int solids)
        {
            int way = b.CompareTo(a);
            if (way != 0)
            {
                var (first, last) = way > 0 ? (a, b) : (b, a);
                cut.Add(first, last, way > 0 ? floors : -floors, way > 0 ? solids : -solids);
                fresh.Add((first, last));
            }
        }
    }

    /// <summary>
    /// Where the edges lie along the longer side of them all (start to end) and across it (low to high), sorted by start.
    /// </summary>
    private static (
        long Start, long End, long Low, long High, int Edge)[] Spans((GridPoint From, GridPoint To, int Floors, int Solids)[] list)
    {
        long west = long.MaxValue, east = long.MinValue, south = long.MaxValue, north = long.MinValue;
        foreach (var (from, to, _, _) in list)
        {
            (west, east) = (Math.Min(west, from.X), Math.Max(east, to.X));
            (south, north) = (Math.Min(south, Math.Min(from.Y, to.Y)), Math.Max(north, Math.Max(from.Y, to.Y)));
        }

        bool alongX = east - west >= north - south;
        var spans = new (long Start, long End, long Low, long High, int Edge)[list.Length];
        for (int i = 0; i < list.Length; i++)
        {
            var (from, to, _, _) = list[i];
            long low = Math.Min(from.Y, to.Y), high = Math.Max(from.Y, to.Y);
            spans[i] = alongX ? (from.X, to.X, low, high, i) : (low, high, from.X, to.X, i);
        }

        Array.Sort(spans, (p, q) => p.Start != q.Start ? p.Start.CompareTo(q.Start) : p.Edge.CompareTo(q.Edge));
        return spans;
    }

    /// <summary>
    /// Where each edge is to be cut, or null when no two meet. Only pairs with a fresh edge are looked at (all at first).
    /// </summary>
    private static List<GridPoint>?[]? Cuts(
        (GridPoint From, GridPoint To, int Floors, int Solids)[] list, HashSet<(GridPoint, GridPoint)>? fresh)
    {
        // Along the longer side of the whole: a pair whose boxes do not overlap along it is never looked at.
        var spans = Spans(list);
        var isFresh = Array.ConvertAll(list, e => fresh is null || fresh.Contains((e.From, e.To)));
        var cuts = new List<GridPoint>?[list.Length];
        bool any = false;
        for (int i = 0; i < spans.Length; i++)
        {
            var span = spans[i];
            for (int j = i + 1; j < spans.Length && spans[j].Start <= span.End + 1; j++)
            {
                if (spans[j].High >= span.Low - 1 && spans[j].Low <= span.High + 1 && (isFresh[span.Edge] || isFresh[spans[j].Edge]))
                {
                    Meet(span.Edge, spans[j].Edge);
                }
            }
        }

        return any ? cuts : null;

        void Meet(int i, int j)
        {
            var (a, b, _, _) = list[i];
            var (c, d, _, _) = list[j];
            bool touched = Touch(i, a, b, c) | Touch(i, a, b, d) | Touch(j, c, d, a) | Touch(j, c, d, b);
            if (touched)
            {
                return;
            }

            long atC = GridPoint.Turn(a, b, c), atD = GridPoint.Turn(a, b, d), atA = GridPoint.Turn(c, d, a), atB = GridPoint.Turn(c, d, b);
            if (Apart(atC, atD) && Apart(atA, atB))
            {
                double part = atA / ((double)atA - atB);
                var p = new GridPoint(a.X + (long)Math.Round(part * (b.X - a.X)), a.Y + (long)Math.Round(part * (b.Y - a.Y)));
                Take(i, a, b, p);
                Take(j, c, d, p);
            }
        }

        bool Touch(int edge, GridPoint from, GridPoint to, GridPoint p)
        {
            if (p == from || p == to)
            {
                return false;
            }

            double dx = to.X - from.X, dy = to.Y - from.Y, square = (dx * dx) + (dy * dy);
            double along = ((p.X - from.X) * dx) + ((p.Y - from.Y) * dy);
            double turn = GridPoint.Turn(from, to, p);
            return along > 0 && along < square && turn * turn <= square / 4 && Take(edge, from, to, p);
        }

        bool Take(int edge, GridPoint from, GridPoint to, GridPoint p)
        {
            if (p == from || p == to)
            {
                return false;
            }

            any = true;
            (cuts[edge] ??= []).Add(p);
            return true;
        }

        static bool Apart(long p, long q) => (p > 0 && q < 0) || (p < 0 && q > 0);
    }
}
