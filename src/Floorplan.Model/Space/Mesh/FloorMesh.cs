using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Mesh;

/// <summary>
/// Free floor as convex cells that meet along whole edges. An edge number is a place in <see cref="Corner"/>; it runs from
/// its corner to the corner of <see cref="Next"/>, anticlockwise round its cell.
/// </summary>
internal sealed class FloorMesh
{
    /// <summary>Points nearer than this are one point, in mm: a hundredth of the finest grid step.</summary>
    public const double Same = 1e-4;

    private readonly int[] cellStart;
    private BoxIndex? cellIndex;
    private BoxIndex? wallIndex;

    private FloorMesh(Coordinate[] points, int[] cellStart, int[] corner, int[] cell, int[] opposite)
    {
        Points = points;
        this.cellStart = cellStart;
        Corner = corner;
        Cell = cell;
        Opposite = opposite;
    }

    public static FloorMesh Empty { get; } = new([], [0], [], [], []);

    public Coordinate[] Points { get; }

    /// <summary>Corner number that each edge starts at.</summary>
    public int[] Corner { get; }

    /// <summary>Cell that each edge belongs to.</summary>
    public int[] Cell { get; }

    /// <summary>The same edge seen from the neighbour cell, or -1 at the end of the free floor.</summary>
    public int[] Opposite { get; }

    public int CellCount => cellStart.Length - 1;

    public bool IsEmpty => CellCount == 0;

    /// <summary>Null when the edges cross each other.</summary>
    public static FloorMesh? Build(BoundaryEdges boundary, double scale)
    {
        if (SweepTriangulator.Cut(boundary) is not { } cut)
        {
            return null;
        }

        var half = new HalfEdges(cut.Points, cut.Triangles);
        half.Improve();
        var (loops, twin, origin) = half.Merge();
        var place = new int[origin.Length];
        Array.Fill(place, -1);
        var start = new int[loops.Count + 1];
        int count = 0;
        for (int c = 0; c < loops.Count; c++)
        {
            start[c] = count;
            foreach (int h in loops[c])
            {
                place[h] = count++;
            }
        }

        start[^1] = count;
        var corner = new int[count];
        var cell = new int[count];
        var opposite = new int[count];
        for (int c = 0; c < loops.Count; c++)
        {
            for (int i = 0; i < loops[c].Length; i++)
            {
                int h = loops[c][i];
                corner[start[c] + i] = origin[h];
                cell[start[c] + i] = c;
                opposite[start[c] + i] = twin[h] < 0 ? -1 : place[twin[h]];
            }
        }

        Steps.Take((long)Steps.Corner * cut.Points.Count);
        var points = cut.Points.Select(p => new Coordinate(p.X / scale, p.Y / scale)).ToArray();
        return new FloorMesh(points, start, corner, cell, opposite);
    }

    public (int Start, int End) EdgesOf(int cell) => (cellStart[cell], cellStart[cell + 1]);

    public int Next(int edge) => edge + 1 < cellStart[Cell[edge] + 1] ? edge + 1 : cellStart[Cell[edge]];

    public Coordinate From(int edge) => Points[Corner[edge]];

    public Coordinate To(int edge) => Points[Corner[Next(edge)]];

    /// <summary>Every cell that holds a point; several when it lies on their common edge, none when it is not on free floor.</summary>
    public List<int> CellsAt(Coordinate p)
    {
        var near = new Envelope(p);
        near.ExpandBy(Same);
        var cells = new List<int>();
        foreach (int cell in CellIndex().Near(near))
        {
            if (Holds(cell, p))
            {
                cells.Add(cell);
            }
        }

        return cells;
    }

    /// <summary>The nearest point on the rim of the free floor and the cell there, or null when there is no free floor.</summary>
    public (Coordinate Point, int Cell)? NearestRim(Coordinate p)
    {
        if (IsEmpty)
        {
            return null;
        }

        var index = WallIndex();
        var all = index.Bounds;

        // Twice the span reaches the rim from anywhere inside; a point farther off starts with its own distance.
        double last = (2 * (all.Width + all.Height)) + all.Distance(new Envelope(p)) + 1;
        for (double radius = Math.Max(100, all.Distance(new Envelope(p)) + 100); ; radius = Math.Min(radius * 2, last))
        {
            var near = new Envelope(p);
            near.ExpandBy(radius);
            var best = (Distance: double.PositiveInfinity, Point: p, Cell: -1);
            foreach (int edge in index.Near(near))
            {
                var q = Line.Nearest(From(edge), To(edge), p);
                double distance = q.Distance(p);
                if (distance < best.Distance)
                {
                    best = (distance, q, Cell[edge]);
                }
            }

            if (best.Distance <= radius || radius >= last)
            {
                return best.Cell < 0 ? null : (best.Point, best.Cell);
            }
        }
    }

    /// <summary>Edges with no neighbour cell.</summary>
    public IEnumerable<int> RimEdges(Envelope near) => IsEmpty ? [] : WallIndex().Near(near);

    private bool Holds(int cell, Coordinate p)
    {
        var (start, end) = EdgesOf(cell);
        for (int e = start; e < end; e++)
        {
            if (Line.Offset(From(e), To(e), p) < -Same)
            {
                return false;
            }
        }

        return true;
    }

    private BoxIndex CellIndex()
    {
        if (cellIndex is null)
        {
            cellIndex = new BoxIndex();
            for (int c = 0; c < CellCount; c++)
            {
                var box = new Envelope();
                var (start, end) = EdgesOf(c);
                for (int e = start; e < end; e++)
                {
                    box.ExpandToInclude(From(e));
                }

                cellIndex.Add(box, c);
            }
        }

        return cellIndex;
    }

    private BoxIndex WallIndex()
    {
        if (wallIndex is null)
        {
            wallIndex = new BoxIndex();
            for (int e = 0; e < Corner.Length; e++)
            {
                if (Opposite[e] < 0)
                {
                    wallIndex.Add(new Envelope(From(e), To(e)), e);
                }
            }
        }

        return wallIndex;
    }
}
