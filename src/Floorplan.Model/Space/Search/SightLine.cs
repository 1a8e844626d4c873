using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Search;

/// <summary>A point on the rim of a cell: on an edge, and the number of its corner when it is one (otherwise -1).</summary>
internal readonly record struct RimPoint(int Edge, Coordinate Point, int Corner)
{
    public static RimPoint StartOf(FloorMesh mesh, int edge) => new(edge, mesh.From(edge), mesh.Corner[edge]);

    /// <summary>Whether it lies on a later edge, going anticlockwise from the entry of the cell.</summary>
    public bool IsPast(RimPoint other, FloorMesh mesh, int entry)
    {
        var (start, end) = mesh.EdgesOf(mesh.Cell[entry]);
        int count = end - start;
        return (Edge - entry + count - 1) % count > (other.Edge - entry + count - 1) % count;
    }
}

/// <summary>Where the sight lines past the two ends of a stretch leave the cell behind it.</summary>
internal static class SightLine
{
    /// <summary>The first rim point, anticlockwise, that is not to the right of the line past the right end.</summary>
    public static RimPoint RightExit(FloorMesh mesh, SearchNode node)
    {
        int first = mesh.Next(node.Edge);
        double before = Line.Offset(node.Root, node.Right, mesh.From(first));
        for (int e = first; e != node.Edge; e = mesh.Next(e))
        {
            double after = Line.Offset(node.Root, node.Right, mesh.To(e));
            if (after > FloorMesh.Same)
            {
                return before >= -FloorMesh.Same ? RimPoint.StartOf(mesh, e) : Between(mesh, e, before, after);
            }

            if (after >= -FloorMesh.Same)
            {
                return RimPoint.StartOf(mesh, mesh.Next(e));
            }

            before = after;
        }

        return RimPoint.StartOf(mesh, node.Edge);
    }

    /// <summary>The last rim point, anticlockwise, that is not to the left of the line past the left end.</summary>
    public static RimPoint LeftExit(FloorMesh mesh, SearchNode node)
    {
        int first = mesh.Next(node.Edge);
        double before = Line.Offset(node.Root, node.Left, mesh.From(first));
        for (int e = first; e != node.Edge; e = mesh.Next(e))
        {
            double after = Line.Offset(node.Root, node.Left, mesh.To(e));
            if (after > FloorMesh.Same)
            {
                return before >= -FloorMesh.Same ? RimPoint.StartOf(mesh, e) : Between(mesh, e, before, after);
            }

            before = after;
        }

        return RimPoint.StartOf(mesh, node.Edge);
    }

    private static RimPoint Between(FloorMesh mesh, int edge, double before, double after) =>
        new(edge, Line.At(mesh.From(edge), mesh.To(edge), before / (before - after)), -1);
}
