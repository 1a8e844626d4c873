using System.Globalization;
using Floorplan.Drawing.Scene;
using Floorplan.Model.Shapes;
using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate.Polygon;

namespace Floorplan.Drawing.Dxf;

/// <summary>Filled areas as triangles, since R12 has no other filling.</summary>
internal static class DxfTriangles
{
    /// <summary>Lighter fills are tints under lines and gaps behind text; a drawing for machines does without them.</summary>
    private const double Lightest = 0.7 * 255;

    public static bool IsDark(string colour)
    {
        int rgb = int.Parse(colour.AsSpan(1), NumberStyles.HexNumber, CultureInfo.InvariantCulture);
        return ((rgb >> 16) + (rgb >> 8 & 255) + (rgb & 255)) / 3.0 < Lightest;
    }

    /// <summary>Three corners each; together they cover what the even-odd rings enclose.</summary>
    public static IEnumerable<PaperPoint[]> Of(AreaItem area)
    {
        List<IReadOnlyList<PaperPoint>> rings = [.. area.Rings.Where(r => r.Count > 2)];
        if (rings is [{ Count: 3 } single])
        {
            return [[.. single]];
        }

        var shape = rings.Select(Polygon).Aggregate((Geometry)Shape.Factory.CreatePolygon(), (all, ring) => Overlays.InOneOnly(all, ring));
        return shape.IsEmpty ? [] : Triangles(new ConstrainedDelaunayTriangulator(shape).GetResult());
    }

    private static IEnumerable<PaperPoint[]> Triangles(Geometry triangles)
    {
        for (int i = 0; i < triangles.NumGeometries; i++)
        {
            yield return [.. triangles.GetGeometryN(i).Coordinates.Take(3).Select(c => new PaperPoint(c.X, c.Y))];
        }
    }

    private static Geometry Polygon(IReadOnlyList<PaperPoint> ring) =>
        Shape.Factory.CreatePolygon([.. ring.Append(ring[0]).Select(p => new Coordinate(p.X, p.Y))]).Buffer(0);
}
