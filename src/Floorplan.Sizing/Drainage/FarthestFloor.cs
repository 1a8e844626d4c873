using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate;

namespace Floorplan.Sizing.Drainage;

/// <summary>The place on a floor that lies farthest, in a straight line, from the nearest of some points.</summary>
internal static class FarthestFloor
{
    /// <summary>Points nearer to each other than this are one, in mm.</summary>
    private const double SamePoint = 0.5;

    /// <summary>
    /// Needs at least one point. Distances in mm. Points outside the floor's bounds do not count beside one inside; with none inside,
    /// the floor's corners are looked at.
    /// </summary>
    public static (Coordinate At, double Mm) From(Polygon floor, IReadOnlyList<Coordinate> points)
    {
        // Cells of points far outside the floor cannot be told apart exactly, and a drain out there drains nothing here.
        var sites = Distinct([.. points.Where(floor.EnvelopeInternal.Contains)]);
        if (sites.Count == 0)
        {
            var corner = floor.Coordinates.MaxBy(c => points.Min(p => p.Distance(c)))!;
            return (corner, points.Min(p => p.Distance(corner)));
        }

        if (sites.Count == 1)
        {
            return Farthest(floor, sites[0]);
        }

        // Inside one cell the nearest point is known, so the farthest place is a corner of cell and floor.
        var best = (At: floor.Coordinate, Mm: -1.0);
        foreach (var (site, part) in Cells(floor, sites))
        {
            if (Farthest(part, site) is var far && far.Mm > best.Mm)
            {
                best = far;
            }
        }

        return best;
    }

    /// <summary>
    /// The floor that lies nearer, in a straight line, to one point than to any other, for each point on the floor; points that nothing
    /// lies nearest to are left out.
    /// </summary>
    public static IEnumerable<(Coordinate Site, Geometry Part)> Nearest(Polygon floor, IReadOnlyList<Coordinate> points)
    {
        var sites = Distinct([.. points.Where(floor.EnvelopeInternal.Contains)]);
        return sites.Count == 1 ? [(sites[0], floor)] : Cells(floor, sites);
    }

    private static IEnumerable<(Coordinate Site, Geometry Part)> Cells(Polygon floor, List<Coordinate> sites)
    {
        if (sites.Count < 2)
        {
            yield break;
        }

        var builder = new VoronoiDiagramBuilder { ClipEnvelope = floor.EnvelopeInternal };
        builder.SetSites(sites);
        foreach (var cell in builder.GetDiagram(Shape.Factory).Geometries)
        {
            var part = Overlays.Common(cell, floor);
            if (!part.IsEmpty && cell.UserData is Coordinate site)
            {
                yield return (site, part);
            }
        }
    }

    private static List<Coordinate> Distinct(IReadOnlyList<Coordinate> points)
    {
        var sorted = points.OrderBy(p => p.X).ThenBy(p => p.Y);
        var distinct = new List<Coordinate>();
        foreach (var point in sorted)
        {
            if (distinct.Count == 0 || distinct[^1].Distance(point) > SamePoint)
            {
                distinct.Add(point);
            }
        }

        return distinct;
    }

    private static (Coordinate At, double Mm) Farthest(Geometry part, Coordinate site)
    {
        var at = part.Coordinates.MaxBy(c => c.Distance(site))!;
        return (at, at.Distance(site));
    }
}
