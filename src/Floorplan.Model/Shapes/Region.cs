using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Union;

namespace Floorplan.Model.Shapes;

/// <summary>
/// A right-angled area, exact: boxes that do not overlap. Placing works on this, so that faces stay whole
/// nanometres; geometry gets the same outline in millimetres.
/// </summary>
public sealed class Region
{
    private readonly Lazy<IReadOnlyList<Face>> faces;

    private Region(IReadOnlyList<Box> boxes)
    {
        Boxes = boxes;
        faces = new(() => boxes.Count == 1 ? FacesOf(boxes[0]) : FaceTracer.Trace(boxes));
    }

    public IReadOnlyList<Box> Boxes { get; }

    /// <summary>The whole edge, holes included, in straight stretches.</summary>
    public IReadOnlyList<Face> Faces => faces.Value;

    public bool IsEmpty => Boxes.Count == 0;

    public bool IsRectangle => Boxes.Count == 1;

    public Box Bounds => new(
        Boxes.Min(b => b.West),
        Boxes.Min(b => b.South),
        Boxes.Max(b => b.East),
        Boxes.Max(b => b.North));

    public double AreaSquareMillimetres => Boxes.Sum(b => b.Width.Millimetres * b.Depth.Millimetres);

    public static Region Of(IEnumerable<Box> boxes) => new([.. boxes.Where(b => b.Width > Length.Zero && b.Depth > Length.Zero)]);

    public static Region Of(Box box) => Of([box]);

    public Region Less(Box hole) => Of(Boxes.SelectMany(b => Cut(b, hole)));

    public Region Within(Box frame) => Of(Boxes.Select(b => Common(b, frame)));

    public bool Touches(Box box)
    {
        foreach (var own in Boxes)
        {
            var common = Common(own, box);
            if (common.Width > Length.Zero && common.Depth > Length.Zero)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The outlines of its separate pieces in millimetres, largest first.</summary>
    public IReadOnlyList<Polygon> ToPolygons()
    {
        if (IsRectangle)
        {
            return [Boxes[0].ToPolygon()];
        }

        var union = UnaryUnionOp.Union(Boxes.Select(b => (Geometry)b.ToPolygon()).ToList());
        if (union is null)
        {
            return [];
        }

        return [.. Enumerable.Range(0, union.NumGeometries)
            .Select(i => union.GetGeometryN(i))
            .OfType<Polygon>()
            .Select(Straighten)
            .OrderByDescending(p => p.Area)];
    }

    /// <summary>
    /// The face that a thing meets when it is pushed towards a side while it spans from..to on the other axis; for a
    /// stepped edge the nearest step. Null when no face lies over that span.
    /// </summary>
    public Length? FaceTowards(Side side, Length from, Length to)
    {
        if (IsRectangle)
        {
            return Boxes[0].Of(side);
        }

        bool low = side is Side.South or Side.West;
        Length? nearest = null;
        foreach (var face in Faces)
        {
            if (face.Side != side || face.From >= to || face.To <= from || IsHidden(face, from, to, low))
            {
                continue;
            }

            if (nearest is not { } at || (low ? face.At > at : face.At < at))
            {
                nearest = face.At;
            }
        }

        return nearest;
    }

    // A face is hidden where another face of the same side lies farther out over the same span.
    private bool IsHidden(Face face, Length from, Length to, bool low)
    {
        var start = Length.Max(face.From, from);
        var end = Length.Min(face.To, to);
        return Faces.Any(f => f.Side == face.Side && f.From <= start && f.To >= end && (low ? f.At < face.At : f.At > face.At));
    }

    private static Face[] FacesOf(Box box) =>
    [
        new(Side.North, box.North, box.West, box.East),
        new(Side.South, box.South, box.West, box.East),
        new(Side.East, box.East, box.South, box.North),
        new(Side.West, box.West, box.South, box.North),
    ];

    private static Box Common(Box a, Box b) => new(
        Length.Max(a.West, b.West), Length.Max(a.South, b.South), Length.Min(a.East, b.East), Length.Min(a.North, b.North));

    private static IEnumerable<Box> Cut(Box box, Box hole)
    {
        var common = Common(box, hole);
        if (common.Width <= Length.Zero || common.Depth <= Length.Zero)
        {
            yield return box;
            yield break;
        }

        yield return box with { East = common.West };
        yield return box with { West = common.East };
        yield return new Box(common.West, box.South, common.East, common.South);
        yield return new Box(common.West, common.North, common.East, box.North);
    }

    // Union leaves a point where two boxes meet on a straight edge.
    private static Polygon Straighten(Polygon polygon) => Shape.Factory.CreatePolygon(
        Straighten(polygon.Shell),
        [.. polygon.Holes.Select(Straighten)]);

    private static LinearRing Straighten(LinearRing ring)
    {
        var points = ring.Coordinates[..^1];
        var kept = points.Where((p, i) =>
        {
            var before = points[(i + points.Length - 1) % points.Length];
            var after = points[(i + 1) % points.Length];
            return !((before.X == p.X && p.X == after.X) || (before.Y == p.Y && p.Y == after.Y));
        }).ToList();
        kept.Add(kept[0].Copy());
        return Shape.Factory.CreateLinearRing([.. kept]);
    }
}
