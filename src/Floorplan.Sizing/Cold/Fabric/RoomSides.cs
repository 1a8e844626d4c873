using Floorplan.Language.Quantities;
using Floorplan.Language.Text;
using Floorplan.Model;
using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Weights;
using NetTopologySuite.Geometries;

namespace Floorplan.Sizing.Cold.Fabric;

/// <summary>The sides of a room: walls to outside, a partition to each neighbour, ceiling and floor.</summary>
internal static class RoomSides
{
    /// <summary>Faces nearer than this touch, mm.</summary>
    private const double Touch = 1;

    public static IReadOnlyList<RoomSide> Of(Plan plan, Room room)
    {
        var shell = plan.Shell;
        double high = room.CeilingHeight.Metres;
        var edges = Edges(room.Floor).ToList();
        var sides = new List<RoomSide>();
        double outside = Along(edges, shell.Finished.Boundary);
        if (outside > 0)
        {
            sides.Add(new RoomSide(
                SideKind.Wall, null, outside, outside / 1000 * high, Panel(shell.WallLining, shell.WallLiningOf, shell.Span)));
        }

        foreach (var (beyond, partitions) in Neighbours(plan, room))
        {
            double run = partitions.Sum(p => Along(edges, p.Outline));
            if (run > 0)
            {
                sides.Add(new RoomSide(
                    SideKind.Partition, beyond, run, run / 1000 * high, Panel(partitions[0].Thickness, partitions[0].BuiltOf, room.Span)));
            }
        }

        sides.Add(new RoomSide(
            SideKind.Ceiling, null, 0, room.AreaSquareMetres, Panel(shell.CeilingLining, shell.CeilingLiningOf, shell.Span)));
        sides.Add(new RoomSide(SideKind.Floor, null, 0, room.AreaSquareMetres, FloorOf(plan)));
        return sides;
    }

    private static BuildUp Panel(Length thickness, string said, SourceSpan span)
        => Build(thickness, said, LayerMaterials.Panel, isFloor: false, bareFloor: false, span);

    private static BuildUp FloorOf(Plan plan) => Build(
        plan.Shell.FloorBuildUp, plan.Shell.FloorBuildUpOf,
        plan.Rooms.Any(r => r.Falls is not null) ? LayerMaterials.Screed : LayerMaterials.Plywood, isFloor: true,
        plan.Shell.Kind == ShellKind.Container, plan.Shell.Span);

    private static BuildUp Build(Length thickness, string said, LayerMaterial usual, bool isFloor, bool bareFloor, SourceSpan span)
    {
        var found = LayerMaterials.Find(said, isFloor);
        return new BuildUp(thickness, said, found ?? usual, found is not null, bareFloor, span);
    }

    private static IEnumerable<(Room Beyond, List<Partition> Partitions)> Neighbours(Plan plan, Room room)
    {
        var by = plan.Partitions.Where(p => p.RoomA == room.Id || p.RoomB == room.Id)
            .ToLookup(p => p.RoomA == room.Id ? p.RoomB : p.RoomA, StringComparer.Ordinal);
        return plan.Rooms.Where(r => by.Contains(r.Id)).Select(r => (r, by[r.Id].ToList()));
    }

    private static IEnumerable<LineString> Edges(Polygon floor)
        => new[] { floor.ExteriorRing }.Concat(floor.InteriorRings).SelectMany(ring => Enumerable.Range(0, ring.NumPoints - 1)
            .Select(i => ring.Factory.CreateLineString([ring.GetCoordinateN(i), ring.GetCoordinateN(i + 1)])));

    /// <summary>How much of the edges lies on a thing, in mm; an edge that only meets it at a corner does not.</summary>
    private static double Along(IEnumerable<LineString> edges, Geometry thing)
    {
        var near = thing.Buffer(Touch);
        double sum = 0;
        foreach (var edge in edges)
        {
            double shared = Overlays.Stretches(edge, near).Length;
            sum += shared < 5 * Touch ? 0 : shared > edge.Length - (3 * Touch) ? edge.Length : shared;
        }

        return sum;
    }
}
