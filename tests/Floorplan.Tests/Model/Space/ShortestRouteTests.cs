using Floorplan.Model.Rooms;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using Floorplan.Tests.Model.Space.Support;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Prepared;
using QuikGraph;
using QuikGraph.Algorithms;
using Xunit;

namespace Floorplan.Tests.Model.Space;

/// <summary>
/// Routes are the true shortest ones. Check values: a plain visibility graph, and QuikGraph's Dijkstra over NetTopologySuite sight
/// lines.
/// </summary>
public class ShortestRouteTests
{
    /// <summary>Both solvers round touching lines by about 0.001 mm a corner.</summary>
    private const double Tolerance = 0.05;

    [Fact]
    public void Same_length_as_a_visibility_graph_in_1500_random_rooms()
    {
        int found = 0, none = 0;
        for (int seed = 0; seed < 1500; seed++)
        {
            var random = new Random(seed);
            var (plan, mover) = RandomRooms.One(random);
            var space = new FloorSpace(plan);
            var floor = space.FreeFloor(plan.Rooms[0], mover);
            var graph = new VisibilityGraph(floor);
            for (int k = 0; k < 3; k++)
            {
                var route = space.Find(plan.Rooms[0], Spot(), plan.Rooms[0], Spot(), mover);
                if (route is null)
                {
                    none++;
                    continue;
                }

                found++;
                AssertSame(graph.Shortest(route.Path.StartPoint.Coordinate, route.Path.EndPoint.Coordinate), route.LengthMm, seed);
                AssertOnFloor(graph, route, seed);
            }

            Coordinate Spot() => RandomRooms.Spot(random, plan.Rooms[0].Floor.EnvelopeInternal);
        }

        Assert.True(found > 3000, $"{found} routes, {none} without");
    }

    [Fact]
    public void No_way_only_where_the_visibility_graph_has_none()
    {
        int none = 0;
        for (int seed = 5000; seed < 5600; seed++)
        {
            var random = new Random(seed);
            var (plan, mover) = RandomRooms.One(random);
            var space = new FloorSpace(plan);
            var floor = space.FreeFloor(plan.Rooms[0], mover);
            if (floor.NumGeometries < 2)
            {
                continue;
            }

            Coordinate a = floor.GetGeometryN(0).InteriorPoint.Coordinate, b = floor.GetGeometryN(1).InteriorPoint.Coordinate;
            Assert.Equal(
                double.IsInfinity(new VisibilityGraph(floor).Shortest(a, b)),
                space.Find(plan.Rooms[0], a, plan.Rooms[0], b, mover) is null);
            none++;
        }

        Assert.True(none > 50, $"{none} split floors");
    }

    [Fact]
    public void Same_length_through_doors_and_round_the_outside_in_250_random_plans()
    {
        int found = 0;
        for (int seed = 10000; seed < 10250; seed++)
        {
            var random = new Random(seed);
            var (plan, mover) = RandomRooms.Two(random);
            var space = new FloorSpace(plan);
            var floors = plan.Rooms.Select(r => space.FreeFloor(r, mover)).Append(space.FreeGround(mover)).ToList();
            var graph = new VisibilityGraph(NetTopologySuite.Operation.OverlayNG.UnaryUnionNG.Union(floors, new PrecisionModel(100)));
            for (int k = 0; k < 2; k++)
            {
                var from = plan.Rooms[random.Next(2)];
                var to = random.Next(3) switch { 0 => null, 1 => plan.Rooms[0], _ => plan.Rooms[1] };
                var route = space.Find(from, Spot(from), to, Spot(to), mover);
                if (route is not null)
                {
                    found++;
                    AssertSame(graph.Shortest(route.Path.StartPoint.Coordinate, route.Path.EndPoint.Coordinate), route.LengthMm, seed);
                    Assert.Equal(from.Id, route.Rooms[0]?.Id);
                    Assert.Equal(to?.Id, route.Rooms[^1]?.Id);
                }
            }

            Coordinate Spot(Room? room) => RandomRooms.Spot(random, (room?.Floor ?? plan.Shell.Outside).EnvelopeInternal);
        }

        Assert.True(found > 250, $"{found} routes");
    }

    [Fact]
    public void Same_length_as_Dijkstra_of_QuikGraph_over_sight_lines_of_NetTopologySuite()
    {
        int found = 0;
        for (int seed = 20000; seed < 20120; seed++)
        {
            var random = new Random(seed);
            var (plan, mover) = RandomRooms.One(random);
            var space = new FloorSpace(plan);
            var room = plan.Rooms[0];
            var route =
                space.Find(
                    room, RandomRooms.Spot(random, room.Floor.EnvelopeInternal), room,
                    RandomRooms.Spot(random, room.Floor.EnvelopeInternal), mover);
            if (route is null)
            {
                continue;
            }

            found++;
            AssertSame(ByQuikGraph(space.FreeFloor(room, mover), route), route.LengthMm, seed);
        }

        Assert.True(found > 80, $"{found} routes");
    }

    private static void AssertSame(double expected, double actual, int seed) =>
        Assert.True(Math.Abs(expected - actual) <= Tolerance, $"seed {seed}: {actual} mm, visibility graph {expected} mm");

    private static void AssertOnFloor(VisibilityGraph graph, Route route, int seed)
    {
        var c = route.Path.Coordinates;
        for (int i = 0; i + 1 < c.Length; i++)
        {
            Assert.True(graph.Sees(c[i], c[i + 1]), $"seed {seed}: the route leaves the free floor");
        }
    }

    private static double ByQuikGraph(Geometry floor, Route route)
    {
        // A hair of slack, so that lines along the rim count as on the floor.
        var slack = PreparedGeometryFactory.Prepare(floor.Buffer(0.002, NetTopologySuite.Operation.Buffer.EndCapStyle.Flat));
        var points = floor.Coordinates.Append(route.Path.StartPoint.Coordinate).Append(route.Path.EndPoint.Coordinate).ToList();
        var graph = new UndirectedGraph<int, TaggedUndirectedEdge<int, double>>();
        graph.AddVertexRange(Enumerable.Range(0, points.Count));
        for (int i = 0; i < points.Count; i++)
        {
            for (int j = i + 1; j < points.Count; j++)
            {
                if (points[i].Equals2D(points[j]) || slack.Covers(Shape.Factory.CreateLineString([points[i], points[j]])))
                {
                    graph.AddEdge(new TaggedUndirectedEdge<int, double>(i, j, points[i].Distance(points[j])));
                }
            }
        }

        var ways = graph.ShortestPathsDijkstra(e => e.Tag, points.Count - 2);
        return ways(points.Count - 1, out var path) ? path.Sum(e => e.Tag) : points[^1].Equals2D(points[^2]) ? 0 : double.PositiveInfinity;
    }
}
