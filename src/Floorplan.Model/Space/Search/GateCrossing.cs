using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Search;

/// <summary>Carries a stretch over a gate. Both rims lie on one line, but need not end at the same corners.</summary>
internal static class GateCrossing
{
    /// <summary>Two steps of the finest grid, in mm: rounding may part the corners of the two rims by so much.</summary>
    private const double Nearby = 0.02;

    /// <summary>What is seen through one edge of the other rim, or null when it is not in sight.</summary>
    public static SearchNode? Of(SearchNode seen, Passage passage, FreeRegion other, int edge, Coordinate left, Coordinate right)
    {
        Coordinate a = other.Mesh.From(edge), b = other.Mesh.To(edge);
        double low = Math.Max(passage.Low, Math.Min(passage.AlongOf(a), passage.AlongOf(b)));
        double high = Math.Min(passage.High, Math.Max(passage.AlongOf(a), passage.AlongOf(b)));
        if (low >= high)
        {
            return null;
        }

        var (leftEnd, leftCorner) = EndAt(left);
        var (rightEnd, rightCorner) = EndAt(right);
        return leftEnd.Distance(rightEnd) <= FloorMesh.Same ? null : seen with
        {
            Region = other.Number,
            Edge = edge,
            Left = leftEnd,
            LeftCorner = leftCorner,
            Right = rightEnd,
            RightCorner = rightCorner,
            Gate = passage,
        };

        (Coordinate, int) EndAt(Coordinate end)
        {
            double along = Math.Clamp(passage.AlongOf(end), low, high);
            foreach (int corner in new[] { other.Mesh.Corner[edge], other.Mesh.Corner[other.Mesh.Next(edge)] })
            {
                if (Math.Abs(passage.AlongOf(other.Mesh.Points[corner]) - along) <= Nearby)
                {
                    return (other.Mesh.Points[corner], corner);
                }
            }

            return (along == passage.AlongOf(end) ? end : passage.Point(along, passage.ThroughOf(a)), -1);
        }
    }
}
