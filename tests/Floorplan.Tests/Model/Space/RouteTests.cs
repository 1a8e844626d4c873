using Floorplan.Model.Openings;
using Floorplan.Model.Space;
using Floorplan.Tests.Model.Space.Support;
using NetTopologySuite.Geometries;
using Xunit;

namespace Floorplan.Tests.Model.Space;

public class RouteTests
{
    private static readonly Mover trolley = Mover.Trolley(600);

    [Fact]
    public void A_free_room_is_crossed_straight()
    {
        var plan = new TestPlan(6000, 3000);
        var room = plan.Room("r", 0, 0, 6000, 3000);
        var route = Space(plan).Find(room, new(1000, 1000), room, new(4000, 2000), Mover.Person)!;
        Assert.Equal(Math.Sqrt(1e7), route.LengthMm, 6);
        Assert.Equal(2, route.Path.NumPoints);
    }

    [Fact]
    public void A_way_round_a_bench_keeps_half_a_person_off_its_corners()
    {
        // The bench spans from the south wall up to y 1000; both ends stand at the south wall, 225 mm off the bench.
        var plan = new TestPlan(6000, 3000);
        var room = plan.Room("r", 0, 0, 6000, 3000);
        plan.Station("bench", room, TestPlan.Rectangle(2500, 0, 3500, 1000));
        var route = Space(plan).Find(room, new(2275, 225), room, new(3725, 225), Mover.Person)!;

        // Corners are cut by a line that touches the circle of half the mover: at 22.5 degrees either side of its middle.
        const double half = (450 - 0.1) / 2;
        double cut = half * Math.Tan(Math.PI / 8);
        Assert.Equal((2 * (1000 + cut - 225)) + (2 * Math.Sqrt(2) * (half - cut)) + 1000 + (2 * cut), route.LengthMm, 1);
        Assert.All(route.Path.Coordinates, c => Assert.True(plan.Build().Stations[0].Footprint.Distance(new Point(c)) >= half - 0.02));
    }

    [Theory]
    [InlineData(600, true)]
    [InlineData(599, false)]
    public void A_trolley_of_600_passes_a_gap_of_600_and_not_one_of_599(double gap, bool passes)
    {
        var plan = new TestPlan(6000, 3000);
        var room = plan.Room("r", 0, 0, 6000, 3000);
        plan.Station("rack", room, TestPlan.Rectangle(2500, gap, 3500, 3000));
        Assert.Equal(passes, Space(plan).Find(room, new(1000, 1500), room, new(5000, 1500), trolley) is not null);
    }

    [Theory]
    [InlineData(600, 2050, true)]
    [InlineData(598, 2050, false)]
    [InlineData(900, 1800, false)]
    public void A_door_lets_through_what_is_no_wider_and_no_higher_than_it(double width, double height, bool passes)
    {
        var (plan, west, east) = TwoRooms();
        plan.UprightOpening("d", west, east, 1000, 1000 + width, 2960, 3040, height: height);
        var route = Space(plan).Find(west, new(1000, 1500), east, new(5000, 1500), trolley);
        Assert.Equal(passes, route is not null);
        if (passes)
        {
            Assert.Equal(["west", "east"], route!.Rooms.Select(r => r?.Id));
            Assert.Equal(["d"], route.Openings.Select(o => o.Id));
        }
    }

    [Fact]
    public void A_way_uses_only_openings_that_it_may_pass()
    {
        var (plan, west, east) = TwoRooms();
        plan.UprightOpening("near", west, east, 1000, 1900, 2960, 3040);
        plan.UprightOpening("far", west, east, 2050, 2950, 2960, 3040);
        var space = Space(plan);
        Assert.Equal("near", space.Find(west, new(1000, 1500), east, new(5000, 1500), Mover.Person)!.Openings.Single().Id);
        Assert.Equal(
            "far", space.Find(west, new(1000, 1500), east, new(5000, 1500), Mover.Person, o => o.Id == "far")!.Openings.Single().Id);
        Assert.Null(space.Find(west, new(1000, 1500), east, new(5000, 1500), Mover.Person, _ => false));
    }

    [Fact]
    public void Rooms_that_touch_without_a_wall_thickness_are_still_apart_but_for_their_door()
    {
        var plan = new TestPlan(6000, 3000);
        var west = plan.Room("west", 0, 0, 3000, 3000);
        var east = plan.Room("east", 3000, 0, 6000, 3000);
        Assert.Null(Space(plan).Find(west, new(1000, 1500), east, new(5000, 1500), Mover.Person));
        plan.UprightOpening("d", west, east, 1000, 1900, 3000, 3000);
        Assert.Equal(4000, Space(plan).Find(west, new(1000, 1500), east, new(5000, 1500), Mover.Person)!.LengthMm, 1);
    }

    [Fact]
    public void What_hangs_above_head_height_is_no_obstacle()
    {
        var plan = new TestPlan(6000, 1000);
        var room = plan.Room("r", 0, 0, 6000, 1000);
        plan.Station("high", room, TestPlan.Rectangle(2500, 0, 3500, 1000), top: 2400, bottom: 2000);
        Assert.NotNull(Space(plan).Find(room, new(1000, 500), room, new(5000, 500), Mover.Person));
        plan.Station("low", room, TestPlan.Rectangle(2500, 0, 3500, 1000), top: 2400, bottom: 1500);
        Assert.Null(Space(plan).Find(room, new(1000, 500), room, new(5000, 500), Mover.Person));
    }

    [Fact]
    public void One_outer_door_leads_to_another_round_the_shell()
    {
        var plan = new TestPlan(6000, 3000, 100);
        var room = plan.Room("r", 0, 0, 6000, 3000);
        plan.Opening("south", null, room, 2000, 2900, -100, 0);
        plan.Opening("north", room, null, 2000, 2900, 3000, 3100);
        var space = Space(plan);
        var round = space.Find(null, new(2450, -700), null, new(2450, 3700), Mover.Person, _ => false)!;

        // West round the shell, over two of its corners, each cut once.
        const double half = (450 - 0.1) / 2;
        double cut = half * Math.Tan(Math.PI / 8);
        double toCorner = Math.Sqrt(Math.Pow(2450 + 100 + cut, 2) + Math.Pow(600 - half, 2));
        Assert.Equal((2 * toCorner) + (2 * Math.Sqrt(2) * (half - cut)) + 3200 + (2 * cut), round.LengthMm, 1);
        Assert.Equal([null], round.Rooms);
        var through = space.Find(null, new(2450, -700), null, new(2450, 3700), Mover.Person)!;
        Assert.Equal(4400, through.LengthMm, 1);
        Assert.Equal([null, "r", null], through.Rooms.Select(r => r?.Id));
    }

    [Fact]
    public void Cargo_doors_are_shut_unless_a_caller_opens_them()
    {
        var plan = new TestPlan(6000, 2400);
        var room = plan.Room("r", 0, 0, 6000, 2400);
        plan.UprightOpening("cargo", null, room, 50, 2350, -100, 0, OpeningKind.CargoDoor, 2200);
        var space = Space(plan);
        Assert.Null(space.Find(room, new(3000, 1200), null, new(-500, 1200), Mover.Person));
        Assert.NotNull(space.Find(room, new(3000, 1200), null, new(-500, 1200), Mover.Person, o => o.Id == "cargo"));
    }

    [Fact]
    public void Ends_move_to_the_nearest_free_floor_and_a_full_room_has_none()
    {
        var plan = new TestPlan(6000, 3000);
        var room = plan.Room("r", 0, 0, 6000, 3000);
        plan.Station("bench", room, TestPlan.Rectangle(2000, 0, 3000, 600));
        var route = Space(plan).Find(room, new(2500, 500), room, new(2500, 2000), Mover.Person)!;
        Assert.Equal(2500, route.Path.StartPoint.X, 1);
        Assert.Equal(825, route.Path.StartPoint.Y, 0);

        var full = new TestPlan(1000, 1000);
        var small = full.Room("r", 0, 0, 1000, 1000);
        full.Station("tank", small, TestPlan.Rectangle(100, 100, 900, 900));
        Assert.Null(Space(full).Find(small, new(50, 50), small, new(950, 950), Mover.Person));
    }

    [Fact]
    public void The_exit_is_the_nearest_of_those_that_count()
    {
        var plan = new TestPlan(8000, 3000);
        var room = plan.Room("r", 0, 0, 8000, 3000);
        plan.Opening("near", null, room, 1000, 1900, -100, 0);
        plan.Opening("far", null, room, 6000, 6900, -100, 0);
        var space = Space(plan);
        Assert.Equal("near", space.FindExit(room, new(2000, 1500), Mover.Person, _ => true)!.Openings.Single().Id);
        var far = space.FindExit(room, new(2000, 1500), Mover.Person, o => o.Id == "far")!;
        Assert.Equal("far", far.Openings.Single().Id);
        Assert.Null(space.FindExit(room, new(2000, 1500), Mover.Person, _ => false));
    }

    [Fact]
    public void The_farthest_place_is_as_far_as_the_visibility_graph_says()
    {
        for (int seed = 0; seed < 60; seed++)
        {
            var random = new Random(seed);
            var (plan, mover) = RandomRooms.Two(random);
            var space = new FloorSpace(plan);
            foreach (var room in plan.Rooms)
            {
                if (space.FarthestExit(room, mover, o => o.Kind == OpeningKind.Door) is not { } far)
                {
                    continue;
                }

                // No corner of the part that people use is farther from the exits.
                var floor = (MultiPolygon)space.FreeFloor(room, mover).Factory.CreateMultiPolygon(
                    [.. Enumerable.Range(0, space.FreeFloor(room, mover).NumGeometries)
                        .Select(i => (Polygon)space.FreeFloor(room, mover).GetGeometryN(i))]);
                foreach (var corner in floor.Geometries.Where(g => g.Area > 250_000).SelectMany(g => g.Coordinates))
                {
                    var way = space.FindExit(room, corner, mover, o => o.Kind == OpeningKind.Door);
                    Assert.True(way is not null
                        && way.LengthMm <= far.LengthMm + 0.1, $"seed {seed}: {way?.LengthMm} beyond {far.LengthMm}");
                }
            }
        }
    }

    [Fact]
    public void A_part_without_a_way_out_has_no_farthest_exit()
    {
        var plan = new TestPlan(6000, 3000);
        var room = plan.Room("r", 0, 0, 6000, 3000);
        plan.Opening("d", null, room, 500, 1400, -100, 0);
        plan.Station("wall", room, TestPlan.Rectangle(2900, 0, 3100, 3000));
        Assert.Null(Space(plan).FarthestExit(room, Mover.Person, _ => true));
    }

    private static FloorSpace Space(TestPlan plan) => new(plan.Build());

    private static (TestPlan Plan, Floorplan.Model.Rooms.Room West, Floorplan.Model.Rooms.Room East) TwoRooms()
    {
        var plan = new TestPlan(6000, 3000);
        return (plan, plan.Room("west", 0, 0, 2960, 3000), plan.Room("east", 3040, 0, 6000, 3000));
    }
}
