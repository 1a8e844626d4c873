using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Geometries;

namespace Floorplan.Model.Space.Search;

/// <summary>
/// The place in a room that is farthest from all exits. Tried are the corners of the
/// free floor, points along its rim, and the middle of each cell: with one exit and nothing in the room the farthest place
/// is a corner; behind things, two ways may meet along a rim or in the open, which is found to half the spacing.
/// </summary>
internal sealed class FarthestSpot(WaysOut ways, FreeRegion room)
{
    /// <summary>Distance of tried points along a rim, in mm; half of it bounds the error. Own assumption.</summary>
    private const double Spacing = 250;

    /// <summary>
    /// A free part that no way leads to is a gap behind something, not floor, below this area in mm2 and without a worker. Own
    /// assumption.
    /// </summary>
    private const double SmallestFloor = 250_000;

    /// <summary>
    /// The farthest place and its distance; <c>Point</c> is null when the room has no free floor, and the distance is infinite when a
    /// part has no way.
    /// </summary>
    public (Coordinate? Point, double Distance) Find(IReadOnlyList<Coordinate> workers)
    {
        var mesh = room.Mesh;
        var best = (Point: (Coordinate?)null, Distance: -1.0);
        for (int corner = 0; corner < mesh.Points.Length; corner++)
        {
            Keep(mesh.Points[corner], ways.FromCorner(room, corner));
        }

        for (int cell = 0; cell < mesh.CellCount; cell++)
        {
            if (ways.Reaches(room, cell) && Bound(cell) > best.Distance)
            {
                foreach (var p in Tried(mesh, cell))
                {
                    Keep(p, ways.From(room, cell, p));
                }
            }
        }

        return CutOff(workers) is { } shut ? (shut, double.PositiveInfinity) : best;

        void Keep(Coordinate p, double distance)
        {
            if (double.IsFinite(distance) && distance > best.Distance)
            {
                best = (p, distance);
            }
        }
    }

    /// <summary>No point of a cell is farther than this: from some corner of it straight on.</summary>
    private double Bound(int cell)
    {
        var mesh = room.Mesh;
        var (start, end) = mesh.EdgesOf(cell);
        double bound = double.PositiveInfinity;
        for (int e = start; e < end; e++)
        {
            double across = 0;
            for (int f = start; f < end; f++)
            {
                across = Math.Max(across, mesh.From(e).Distance(mesh.From(f)));
            }

            bound = Math.Min(bound, ways.FromCorner(room, mesh.Corner[e]) + across);
        }

        return bound;
    }

    private static IEnumerable<Coordinate> Tried(FloorMesh mesh, int cell)
    {
        var (start, end) = mesh.EdgesOf(cell);
        double x = 0, y = 0;
        for (int e = start; e < end; e++)
        {
            Coordinate from = mesh.From(e), to = mesh.To(e);
            (x, y) = (x + from.X, y + from.Y);
            int pieces = mesh.Opposite[e] < 0 ? (int)Math.Ceiling(from.Distance(to) / Spacing) : 1;
            for (int i = 1; i < pieces; i++)
            {
                yield return Line.At(from, to, i / (double)pieces);
            }
        }

        yield return new Coordinate(x / (end - start), y / (end - start));
    }

    private Coordinate? CutOff(IReadOnlyList<Coordinate> workers)
    {
        var mesh = room.Mesh;
        foreach (var floor in room.Floors)
        {
            var first = floor.ExteriorRing.Coordinates[0];
            if (mesh.CellsAt(first).Any(c => ways.Reaches(room, c)))
            {
                continue;
            }

            if (floor.Area >= SmallestFloor
                || workers.Any(w => floor.EnvelopeInternal.Contains(w) && floor.Covers(floor.Factory.CreatePoint(w))))
            {
                return first;
            }
        }

        return null;
    }
}
