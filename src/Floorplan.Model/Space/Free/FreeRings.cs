using Floorplan.Model.Shapes;
using Floorplan.Model.Space.Mesh;
using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;

namespace Floorplan.Model.Space.Free;

/// <summary>
/// Takes widened walls and obstacles out of a floor. Things whose boxes do not touch are never put through an overlay
/// together: a thing that stands alone simply becomes a hole, so that the cost of a big room stays close to linear.
/// </summary>
internal static class FreeRings
{
    /// <summary>Steps per mm: 0.01 mm, and coarser when an overlay fails on the finer grid.</summary>
    private static readonly double[] scales = [100, 10, 1];

    /// <summary>The free floor as polygons on a grid, and the steps per mm of that grid.</summary>
    public static (List<Polygon> Floors, double Scale) Of(
        IReadOnlyList<Geometry> floor, IReadOnlyList<List<Coordinate>> walls, IReadOnlyList<List<Coordinate>> things, double halfWidth)
    {
        foreach (double scale in scales)
        {
            try
            {
                return (Cut(floor, walls, things, halfWidth, scale), scale);
            }
            catch (Exception e) when (e is ApplicationException or ArgumentException or InvalidOperationException)
            {
                // The overlay could not be made exact on this grid; a coarser grid moves points together and frees it.
            }
        }

        return ([], scales[0]);
    }

    private static List<Polygon> Cut(
        IReadOnlyList<Geometry> parts, IReadOnlyList<List<Coordinate>> walls, IReadOnlyList<List<Coordinate>> things, double halfWidth, double scale)
    {
        var grid = new PrecisionModel(scale);
        var floor = UnaryUnionNG.Union([.. parts], Shape.Factory, grid);
        var wide = walls.Concat(things).Select(t => Ring(ConvexRing.Widen(t, halfWidth, scale), scale)).ToList();
        var group = Groups(floor, wide, walls.Count);
        var byGroup = new Dictionary<int, List<Geometry>>();
        for (int i = 0; i < wide.Count; i++)
        {
            if (wide[i] is { } ring)
            {
                (byGroup.TryGetValue(group[i], out var list) ? list : byGroup[group[i]] = []).Add(ring);
            }
        }

        var core = byGroup.Remove(Wall, out var solid)
            ? OverlayNG.Overlay(floor, UnaryUnionNG.Union(solid, grid), SpatialFunction.Difference, grid)
            : floor;
        var floors = new List<(Polygon Floor, IndexedPointInAreaLocator Locator, List<LinearRing> Holes)>();
        foreach (var part in Polygons(core))
        {
            floors.Add((part, new IndexedPointInAreaLocator(part), []));
        }

        var islands = new List<Polygon>();
        foreach (var lone in byGroup.Values)
        {
            var blocks = lone.Count == 1 ? lone[0] : UnaryUnionNG.Union(lone, grid);
            foreach (var block in Polygons(blocks))
            {
                var home = floors.FirstOrDefault(f => f.Floor.EnvelopeInternal.Contains(block.EnvelopeInternal)
                    && f.Locator.Locate(block.ExteriorRing.Coordinates[0]) == Location.Interior);
                if (home.Floor is null)
                {
                    continue;
                }

                home.Holes.Add((LinearRing)block.ExteriorRing);
                islands.AddRange(block.InteriorRings.Select(r => Shape.Factory.CreatePolygon((LinearRing)r)));
            }
        }

        return
        [
            .. floors.Select(f => f.Holes.Count == 0 ? f.Floor : Shape.Factory.CreatePolygon(
                (LinearRing)f.Floor.ExteriorRing, [.. f.Floor.InteriorRings.Cast<LinearRing>(), .. f.Holes])),
            .. islands,
        ];
    }

    private const int Wall = -1;

    /// <summary>Group of each thing: things whose boxes touch share one; all that touch a wall, or the rim of the floor, are <see cref="Wall"/>.</summary>
    private static int[] Groups(Geometry floor, List<Polygon?> wide, int wallCount)
    {
        var parent = Enumerable.Range(0, wide.Count + 1).ToArray();
        int rim = wide.Count;
        var index = new STRtree<int>();
        for (int i = 0; i < wide.Count; i++)
        {
            if (wide[i] is { } ring)
            {
                index.Insert(ring.EnvelopeInternal, i);
                if (i < wallCount)
                {
                    parent[i] = rim;
                }
            }
        }

        if (index.Count > 0)
        {
            for (int i = wallCount; i < wide.Count; i++)
            {
                if (wide[i] is { } ring)
                {
                    foreach (int j in index.Query(ring.EnvelopeInternal))
                    {
                        parent[Root(i)] = Root(j);
                    }
                }
            }

            foreach (var polygon in Polygons(floor))
            {
                foreach (var line in new[] { polygon.ExteriorRing }.Concat(polygon.InteriorRings))
                {
                    var corners = line.Coordinates;
                    for (int i = 0; i + 1 < corners.Length; i++)
                    {
                        foreach (int j in index.Query(new Envelope(corners[i], corners[i + 1])))
                        {
                            parent[Root(j)] = Root(rim);
                        }
                    }
                }
            }
        }

        int wall = Root(rim);
        return [.. Enumerable.Range(0, wide.Count).Select(i => Root(i) is var r && r == wall ? Wall : r)];

        int Root(int i)
        {
            while (parent[i] != i)
            {
                i = parent[i] = parent[parent[i]];
            }

            return i;
        }
    }

    private static Polygon? Ring(List<GridPoint> ring, double scale)
    {
        if (ring.Count < 3)
        {
            return null;
        }

        var corners = new Coordinate[ring.Count + 1];
        for (int i = 0; i < ring.Count; i++)
        {
            corners[i] = new Coordinate(ring[i].X / scale, ring[i].Y / scale);
        }

        corners[^1] = corners[0].Copy();
        return Shape.Factory.CreatePolygon(corners);
    }

    private static IEnumerable<Polygon> Polygons(Geometry geometry)
    {
        for (int i = 0; i < geometry.NumGeometries; i++)
        {
            if (geometry.GetGeometryN(i) is Polygon { IsEmpty: false } polygon)
            {
                yield return polygon;
            }
        }
    }
}
