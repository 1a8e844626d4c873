using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Free;

/// <summary>The free floor of one room, or of the ground round the shell, for one mover: polygons, mesh and gates.</summary>
internal sealed class FreeRegion
{
    private readonly Dictionary<int, List<int>> edgesByPassage = [];
    private readonly Dictionary<int, List<Passage>> passagesByEdge = [];

    private List<Polygon>? floors;

    public FreeRegion(Room? room, int number, FloorMesh mesh, double scale, IReadOnlyList<Passage> passages, int firstCorner)
    {
        Room = room;
        Number = number;
        FirstCorner = firstCorner;
        Mesh = mesh;
        Passages = passages;
        foreach (var passage in passages)
        {
            FindGate(passage, scale);
        }
    }

    /// <summary>Null is the ground outside.</summary>
    public Room? Room { get; }

    public int Number { get; }

    public FloorMesh Mesh { get; }

    /// <summary>Openings that lead to it and let the mover through.</summary>
    public IReadOnlyList<Passage> Passages { get; }

    /// <summary>Added to this mesh's corner numbers, they are unlike those of every other region of the map.</summary>
    public int FirstCorner { get; }

    /// <summary>Outlines of the parts that hang together.</summary>
    public IReadOnlyList<Polygon> Floors => floors ??= FloorOutline.Polygons(Mesh);

    public Geometry Geometry => Floors.Count == 1 ? Floors[0] : Shape.Factory.CreateMultiPolygon([.. Floors]);

    public IReadOnlyList<int> GateEdges(Passage passage) => edgesByPassage.TryGetValue(passage.Number, out var edges) ? edges : [];

    public IReadOnlyList<Passage> PassagesAt(int edge) => passagesByEdge.TryGetValue(edge, out var passages) ? passages : [];

    /// <summary>The nearest free place to a point, or null when nothing is free.</summary>
    public FreePlace? Settle(Coordinate p)
    {
        if (!double.IsFinite(p.X) || !double.IsFinite(p.Y))
        {
            return null;
        }

        var cells = Mesh.CellsAt(p);
        if (cells.Count == 0)
        {
            if (Mesh.NearestRim(p) is not { } rim)
            {
                return null;
            }

            p = rim.Point;
            cells = Mesh.CellsAt(p);
            if (!cells.Contains(rim.Cell))
            {
                cells.Add(rim.Cell);
            }
        }

        // A place beside a corner is the corner, so that no way starts with a needle of a triangle.
        foreach (int cell in cells)
        {
            var (start, end) = Mesh.EdgesOf(cell);
            for (int e = start; e < end; e++)
            {
                if (Mesh.From(e).Distance(p) <= FloorMesh.Same)
                {
                    var corner = Mesh.From(e);
                    return new FreePlace(this, corner, Mesh.CellsAt(corner));
                }
            }
        }

        return new FreePlace(this, p, cells);
    }

    private void FindGate(Passage passage, double scale)
    {
        // Both rooms round the gate line alike; cutting edges may have moved a rim by one step more.
        double line = Math.Round(passage.Gate * scale) / scale, step = 1.01 / scale;
        foreach (int edge in Mesh.RimEdges(new Envelope(passage.Point(passage.Low, line), passage.Point(passage.High, line))))
        {
            Coordinate a = Mesh.From(edge), b = Mesh.To(edge);
            if (Math.Abs(passage.ThroughOf(a) - line) > step || Math.Abs(passage.ThroughOf(b) - line) > step
                || Math.Max(passage.AlongOf(a), passage.AlongOf(b)) <= passage.Low
                || Math.Min(passage.AlongOf(a), passage.AlongOf(b)) >= passage.High)
            {
                continue;
            }

            (edgesByPassage.TryGetValue(passage.Number, out var edges) ? edges : edgesByPassage[passage.Number] = []).Add(edge);
            (passagesByEdge.TryGetValue(edge, out var list) ? list : passagesByEdge[edge] = []).Add(passage);
        }
    }
}

/// <summary>A place on free floor, with the cells that hold it.</summary>
internal sealed record FreePlace(FreeRegion Region, Coordinate Point, List<int> Cells);
