using Floorplan.Model.Space.Mesh;

namespace Floorplan.Model.Space.Free;

/// <summary>
/// The edges of many solids. A big heap is halved over and over and only the outline of each half is kept, because edges
/// deep in a heap would each meet all the others.
/// </summary>
internal static class SolidHeap
{
    /// <summary>So many solids are taken as they are. Own assumption; a wall group of a plain room has about 40.</summary>
    private const int Few = 64;

    /// <summary>Null when the edges do not settle on the grid.</summary>
    public static BoundaryEdges? Of(List<List<GridPoint>> rings)
    {
        if (rings.Count <= Few)
        {
            var edges = new BoundaryEdges();
            rings.ForEach(r => edges.AddRing(r, true));
            return edges;
        }

        var spread = new NetTopologySuite.Geometries.Envelope();
        rings.ForEach(r => spread.ExpandToInclude(r[0].X, r[0].Y));
        rings.Sort((a, b) => spread.Width >= spread.Height ? a[0].CompareTo(b[0]) : (a[0].Y, a[0].X).CompareTo((b[0].Y, b[0].X)));
        int half = rings.Count / 2;
        if (Outline(rings.GetRange(0, half)) is not { } all || Outline(rings.GetRange(half, rings.Count - half)) is not { } rest)
        {
            return null;
        }

        all.AddAll(rest);
        return all;
    }

    private static BoundaryEdges? Outline(List<List<GridPoint>> rings) =>
        Of(rings) is { } edges && EdgeNoder.Node(edges) is { } noded ? SweepTriangulator.Outline(noded) : null;
}
