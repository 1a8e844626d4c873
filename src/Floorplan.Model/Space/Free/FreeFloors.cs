using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Free;

/// <summary>
/// Takes widened walls and obstacles out of a floor. Edges are cut against each other only within groups of things whose
/// boxes touch: what stands alone is simply a hole, so that the cost of a big room stays close to linear.
/// </summary>
internal static class FreeFloors
{
    /// <summary>Steps per mm: 0.01 mm, and coarser when edges do not settle on the finer grid.</summary>
    private static readonly double[] scales = [100, 10, 1];

    /// <summary>The free floor as a mesh, and the steps per mm of its grid.</summary>
    public static (FloorMesh Mesh, double Scale) Of(
        IReadOnlyList<Polygon> floors, IReadOnlyList<List<Coordinate>> walls, IReadOnlyList<List<Coordinate>> things, double halfWidth)
    {
        foreach (double scale in scales)
        {
            if (Edges(floors, walls, things, halfWidth, scale) is { } edges && FloorMesh.Build(edges, scale) is { } mesh)
            {
                return (mesh, scale);
            }
        }

        return (FloorMesh.Empty, scales[0]);
    }

    private static BoundaryEdges? Edges(
        IReadOnlyList<Polygon> floors, IReadOnlyList<List<Coordinate>> walls, IReadOnlyList<List<Coordinate>> things, double halfWidth,
        double scale)
    {
        var rings = new List<(List<GridPoint> Ring, bool Solid)>();
        foreach (var floor in floors.Where(f => !f.IsEmpty))
        {
            rings.Add((Ring(floor.ExteriorRing, true, scale), false));
            rings.AddRange(floor.InteriorRings.Select(h => (Ring(h, false, scale), false)));
        }

        int rims = rings.Count;
        rings.AddRange(walls.Concat(things).Select(t => (ConvexRing.Widen(t, halfWidth, scale), true)));
        var all = new BoundaryEdges();
        foreach (var group in Groups(rings, rims, rims + walls.Count))
        {
            if (group.Count == 1)
            {
                all.AddRing(rings[group[0]].Ring, rings[group[0]].Solid);
                continue;
            }

            if (SolidHeap.Of([.. group.Where(i => rings[i].Solid).Select(i => rings[i].Ring)]) is not { } edges)
            {
                return null;
            }

            foreach (int i in group.Where(i => !rings[i].Solid))
            {
                edges.AddRing(rings[i].Ring, false);
            }

            if (EdgeNoder.Node(edges) is not { } noded)
            {
                return null;
            }

            all.AddAll(noded);
        }

        return all;
    }

    /// <summary>
    /// Things whose boxes touch share a group. All rims and walls are one group, with every thing that touches a wall or an edge of a
    /// rim.
    /// </summary>
    private static IEnumerable<List<int>> Groups(List<(List<GridPoint> Ring, bool Solid)> rings, int rims, int firstThing)
    {
        var parent = Enumerable.Range(0, rings.Count).ToArray();
        Array.Fill(parent, 0, 0, Math.Min(firstThing, parent.Length));
        var index = new BoxIndex();
        for (int i = rims; i < rings.Count; i++)
        {
            index.Add(Box(rings[i].Ring), i);
        }

        for (int i = firstThing; i < rings.Count; i++)
        {
            foreach (int j in index.Near(Box(rings[i].Ring)))
            {
                parent[Root(i)] = Root(j);
            }
        }

        for (int i = 0; i < rims; i++)
        {
            var ring = rings[i].Ring;
            for (int k = 0; k < ring.Count; k++)
            {
                foreach (int j in index.Near(Box([ring[k], ring[(k + 1) % ring.Count]])))
                {
                    parent[Root(j)] = Root(0);
                }
            }
        }

        return Enumerable.Range(0, rings.Count).GroupBy(Root).Select(g => g.ToList()).ToList();

        int Root(int i)
        {
            while (parent[i] != i)
            {
                i = parent[i] = parent[parent[i]];
            }

            return i;
        }
    }

    /// <summary>One step wider, so that what touches by rounding is cut together.</summary>
    private static Envelope Box(IReadOnlyList<GridPoint> ring)
    {
        var box = new Envelope();
        foreach (var p in ring)
        {
            box.ExpandToInclude(p.X, p.Y);
        }

        box.ExpandBy(1);
        return box;
    }

    private static List<GridPoint> Ring(LineString line, bool anticlockwise, double scale)
    {
        var corners = line.Coordinates;
        var ring = new List<GridPoint>(corners.Length);
        for (int i = 0; i + 1 < corners.Length; i++)
        {
            ring.Add(GridPoint.Round(corners[i], scale));
        }

        if (Area.OfRingSigned(corners) < 0 != anticlockwise)
        {
            ring.Reverse();
        }

        return ring;
    }
}
