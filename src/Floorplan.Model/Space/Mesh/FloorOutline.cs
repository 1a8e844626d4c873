using Floorplan.Model.Shapes;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Mesh;

/// <summary>The parts of a mesh that hang together, and their outlines as polygons.</summary>
internal static class FloorOutline
{
    /// <summary>Part number of each cell, from 0; cells that share an edge are of one part.</summary>
    public static (int[] Part, int Count) Parts(FloorMesh mesh)
    {
        var part = new int[mesh.CellCount];
        Array.Fill(part, -1);
        int count = 0;
        var waiting = new Stack<int>();
        for (int first = 0; first < part.Length; first++)
        {
            if (part[first] >= 0)
            {
                continue;
            }

            part[first] = count;
            waiting.Push(first);
            while (waiting.TryPop(out int cell))
            {
                var (start, end) = mesh.EdgesOf(cell);
                for (int e = start; e < end; e++)
                {
                    if (mesh.Opposite[e] >= 0 && part[mesh.Cell[mesh.Opposite[e]]] < 0)
                    {
                        part[mesh.Cell[mesh.Opposite[e]]] = count;
                        waiting.Push(mesh.Cell[mesh.Opposite[e]]);
                    }
                }
            }

            count++;
        }

        return (part, count);
    }

    public static List<Polygon> Polygons(FloorMesh mesh)
    {
        var (part, count) = Parts(mesh);
        var shells = new List<LinearRing>[count];
        var holes = new List<LinearRing>[count];
        var seen = new bool[mesh.Corner.Length];
        for (int e = 0; e < seen.Length; e++)
        {
            if (mesh.Opposite[e] >= 0 || seen[e])
            {
                continue;
            }

            foreach (var ring in Rings(mesh, e, seen))
            {
                var list = Orientation.IsCCW(ring.CoordinateSequence) ? shells : holes;
                (list[part[mesh.Cell[e]]] ??= []).Add(ring);
            }
        }

        var polygons = new List<Polygon>();
        for (int p = 0; p < count; p++)
        {
            // A part has one outer rim: everything else that it walks round is a hole.
            for (int s = 0; s < (shells[p]?.Count ?? 0); s++)
            {
                polygons.Add(Shape.Factory.CreatePolygon(shells[p][s], s == 0 && holes[p] is { } inner ? [.. inner] : []));
            }
        }

        return polygons;
    }

    /// <summary>
    /// Walks one rim with the floor on its left; where it comes back to a corner, the loop in between is a ring of its own.
    /// </summary>
    private static IEnumerable<LinearRing> Rings(FloorMesh mesh, int first, bool[] seen)
    {
        var walked = new List<int>();
        var place = new Dictionary<int, int>();
        for (int e = first; ; e = NextRim(mesh, e))
        {
            int corner = mesh.Corner[e];
            if (place.TryGetValue(corner, out int start))
            {
                if (walked.Count - start >= 3)
                {
                    yield return Ring(mesh, walked.GetRange(start, walked.Count - start));
                }

                foreach (int gone in walked.Skip(start))
                {
                    place.Remove(gone);
                }

                walked.RemoveRange(start, walked.Count - start);
            }

            if (seen[e])
            {
                yield break;
            }

            seen[e] = true;
            place[corner] = walked.Count;
            walked.Add(corner);
        }
    }

    private static int NextRim(FloorMesh mesh, int edge)
    {
        int e = mesh.Next(edge);
        while (mesh.Opposite[e] >= 0)
        {
            e = mesh.Next(mesh.Opposite[e]);
        }

        return e;
    }

    private static LinearRing Ring(FloorMesh mesh, List<int> corners)
    {
        var ring = new Coordinate[corners.Count + 1];
        for (int i = 0; i < corners.Count; i++)
        {
            ring[i] = mesh.Points[corners[i]].Copy();
        }

        ring[^1] = ring[0].Copy();
        return Shape.Factory.CreateLinearRing(ring);
    }
}
