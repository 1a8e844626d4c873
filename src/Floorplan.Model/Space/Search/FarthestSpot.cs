using Floorplan.Model.Openings;
using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Search;

/// <summary>
/// The place in a room that is farthest from a set of exits, all ways measured in one pass. Tried are the corners of the
/// free floor, points along its rim, and the middle of each cell: with one exit and nothing in the room the farthest place
/// is a corner; behind things, two ways may meet along a rim or in the open, which is found to half the spacing.
/// </summary>
internal sealed class FarthestSpot(FloorMap map, FreeRegion room, Func<Opening, bool> mayPass)
{
    /// <summary>Distance of tried points along a rim, in mm; half of it bounds the error. Own assumption.</summary>
    private const double Spacing = 250;

    /// <summary>A free part that no way leads to is a gap behind something, not floor, below this area in mm2 and without a worker. Own assumption.</summary>
    private const double SmallestFloor = 250_000;

    /// <summary>The farthest place and its distance; <c>Point</c> is null when the room has no free floor, and the distance is infinite when a part has no way.</summary>
    public (Coordinate? Point, double Distance) From(IReadOnlyList<FreePlace> exits, IReadOnlyList<Coordinate> workers)
    {
        var mesh = room.Mesh;
        var seen = new List<SearchNode>[mesh.CellCount];
        new WaySearch(map, mayPass).Flood(exits, node =>
        {
            if (node.Region == room.Number)
            {
                (seen[mesh.Cell[node.Edge]] ??= []).Add(node);
            }
        });

        var corners = new Dictionary<int, double>();
        var best = (Point: (Coordinate?)null, Distance: -1.0);
        for (int cell = 0; cell < mesh.CellCount; cell++)
        {
            if (seen[cell] is not { } nodes)
            {
                continue;
            }

            var (start, end) = mesh.EdgesOf(cell);
            double x = 0, y = 0;
            for (int e = start; e < end; e++)
            {
                var from = mesh.From(e);
                (x, y) = (x + from.X, y + from.Y);
                double distance = Distance(nodes, from);
                corners[mesh.Corner[e]] = Math.Min(distance, corners.GetValueOrDefault(mesh.Corner[e], double.PositiveInfinity));
                int pieces = mesh.Opposite[e] < 0 ? (int)Math.Ceiling(from.Distance(mesh.To(e)) / Spacing) : 1;
                for (int i = 1; i < pieces; i++)
                {
                    Try(Line.At(from, mesh.To(e), i / (double)pieces), nodes);
                }
            }

            Try(new Coordinate(x / (end - start), y / (end - start)), nodes);
        }

        foreach (var (corner, distance) in corners)
        {
            if (double.IsFinite(distance) && distance > best.Distance)
            {
                best = (mesh.Points[corner], distance);
            }
        }

        return CutOff(seen, workers) is { } shut ? (shut, double.PositiveInfinity) : best;

        void Try(Coordinate p, List<SearchNode> nodes)
        {
            double distance = Distance(nodes, p);
            if (double.IsFinite(distance) && distance > best.Distance)
            {
                best = (p, distance);
            }
        }
    }

    /// <summary>The shortest way to a point of a cell through any of the stretches that it is entered by.</summary>
    private static double Distance(List<SearchNode> nodes, Coordinate p)
    {
        double best = double.PositiveInfinity;
        foreach (var node in nodes)
        {
            bool left = !node.AtEnd && Line.Offset(node.Root, node.Left, p) > FloorMesh.Same;
            bool right = !node.AtEnd && Line.Offset(node.Root, node.Right, p) < -FloorMesh.Same;
            if (!left && !right)
            {
                best = Math.Min(best, node.Walked + node.Root.Distance(p));
            }
            else if ((left ? node.LeftCorner : node.RightCorner) >= 0)
            {
                // Out of sight behind the end of the stretch: the way turns there, still within this cell.
                var end = left ? node.Left : node.Right;
                best = Math.Min(best, node.Walked + node.Root.Distance(end) + end.Distance(p));
            }
        }

        return best;
    }

    private Coordinate? CutOff(List<SearchNode>[] seen, IReadOnlyList<Coordinate> workers)
    {
        var mesh = room.Mesh;
        foreach (var floor in room.Floors)
        {
            var first = floor.ExteriorRing.Coordinates[0];
            if (mesh.CellsAt(first).Any(c => seen[c] is not null))
            {
                continue;
            }

            if (floor.Area >= SmallestFloor || workers.Any(w => floor.EnvelopeInternal.Contains(w) && floor.Covers(floor.Factory.CreatePoint(w))))
            {
                return first;
            }
        }

        return null;
    }
}
