using Floorplan.Language.Syntax;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Bodies;
using NetTopologySuite.Geometries;

namespace Floorplan.Checks.Measuring;

/// <summary>
/// Where a person can stand before one side of a thing, facing it: a body of <see cref="Body.Shoulders"/> by <see cref="Body.Belly"/>.
/// </summary>
internal sealed class StandingBefore(FloorSpace space, Station thing, Side side)
{
    /// <summary>Farther before the side than this nobody looks, in mm; own assumption.</summary>
    private const double Farthest = 3000;

    private readonly bool facesNorthOrSouth = side.RunsEastWest();

    /// <summary>A standing place right at the middle of the side, <see cref="WorkerSize"/> in size.</summary>
    public Polygon Ideal => Floor(WorkerSize.Width.Millimetres, 0, WorkerSize.Depth.Millimetres);

    /// <summary>
    /// From the thing to the middle of the nearest place, in mm; infinity without one. The person may stand aside by half a
    /// standing place from the middle of the side, and anywhere along a long one.
    /// </summary>
    public double Nearest()
    {
        var box = thing.Footprint.EnvelopeInternal;
        double along = Math.Max(facesNorthOrSouth ? box.Width : box.Height, WorkerSize.Width.Millimetres);
        var free = Overlays.Common(Floor(along, Body.Belly / 2, Farthest), thing.Room.Floor);
        foreach (var taken in Taken(free.EnvelopeInternal))
        {
            free = free.Intersects(taken) ? Overlays.Less(free, taken) : free;
        }

        return free.IsEmpty ? double.PositiveInfinity : thing.Footprint.Distance(free);
    }

    /// <summary>Where the middle of the body cannot be: each wall and each thing, grown by half the body.</summary>
    private IEnumerable<Geometry> Taken(Envelope about)
    {
        var near = about.Copy();
        near.ExpandBy(Body.Shoulders);
        foreach (var other in space.StationsNear(near).Where(s => s.Id != thing.Id && InTheWay.Is(s)))
        {
            yield return Grown(other.Footprint.Coordinates);
        }

        var floor = thing.Room.Floor;
        foreach (var ring in floor.InteriorRings.Append(floor.ExteriorRing).Select(r => r.Coordinates))
        {
            for (int i = 0; i + 1 < ring.Length; i++)
            {
                if (near.Intersects(ring[i], ring[i + 1]))
                {
                    yield return Grown([ring[i], ring[i + 1]]);
                }
            }
        }
    }

    private Geometry Grown(Coordinate[] convex)
    {
        // Less by what counts as a rounding, so that a gap just as wide as the body stays open.
        double halfAlong = (Body.Shoulders / 2) - Tiers.Tolerance;
        double halfDeep = (Body.Belly / 2) - Tiers.Tolerance;
        var (x, y) = facesNorthOrSouth ? (halfAlong, halfDeep) : (halfDeep, halfAlong);
        return Shape.Factory.CreateMultiPointFromCoords(
        [
            .. convex.SelectMany(
                c => new Coordinate[] { new(c.X - x, c.Y - y), new(c.X + x, c.Y - y), new(c.X - x, c.Y + y), new(c.X + x, c.Y + y) }),
        ]).ConvexHull();
    }

    /// <summary>The floor before the side, centred on it, between two distances from it.</summary>
    private Polygon Floor(double along, double from, double to)
    {
        var box = thing.Footprint.EnvelopeInternal;
        double half = along / 2;
        var middle = box.Centre;
        var floor = side switch
        {
            Side.North => new Envelope(middle.X - half, middle.X + half, box.MaxY + from, box.MaxY + to),
            Side.South => new Envelope(middle.X - half, middle.X + half, box.MinY - to, box.MinY - from),
            Side.East => new Envelope(box.MaxX + from, box.MaxX + to, middle.Y - half, middle.Y + half),
            _ => new Envelope(box.MinX - to, box.MinX - from, middle.Y - half, middle.Y + half),
        };
        return (Polygon)Shape.Factory.ToGeometry(floor);
    }
}
