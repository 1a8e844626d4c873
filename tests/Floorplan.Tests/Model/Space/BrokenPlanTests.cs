using System.Diagnostics;
using Floorplan.Model.Flows;
using Floorplan.Model.Openings;
using Floorplan.Model.Rooms;
using Floorplan.Model.Space;
using Floorplan.Tests.Model.Space.Support;
using Xunit;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Tests.Model.Space;

/// <summary>A plan may be wrong in any way and is still answered: no exception, no endless search.</summary>
public class BrokenPlanTests
{
    [Fact]
    public void Nonsense_plans_get_answers()
    {
        for (int seed = 0; seed < 400; seed++)
        {
            var random = new Random(seed);
            var plan = new TestPlan(4000, 2500, random.Next(3) * 50);
            var rooms = Enumerable.Range(0, random.Next(1, 5)).Select(i => Room(plan, "r" + i, random)).ToList();
            for (int i = 0; i < random.Next(6); i++)
            {
                Opening(plan, "o" + i, rooms, random);
            }

            var stops = new List<Stop> { new OutsideStop(TestPlan.Nowhere) };
            for (int i = 0; i < random.Next(8); i++)
            {
                double x = Number(random), y = Number(random), w = random.Next(4) == 0
                    ? 0
                    : random.Next(1, 2000), d = random.Next(4) == 0
                    ? 0
                    : random.Next(1, 1000);
                var shape = TestPlan.Rectangle(x, y, x + w, y + d);
                stops.Add(
                    new StationStop(
                        plan.Station("s" + i, rooms[random.Next(rooms.Count)], random.Next(2) == 0 || shape.Area == 0
                            ? shape
                            : TestPlan.Turned(shape, random.Next(360))), TestPlan.Nowhere));
            }

            stops.AddRange(rooms.Select(r => new RoomStop(r, TestPlan.Nowhere)));
            plan.Flow(Stream.Product, CarriageKind.Hand, null, [.. stops]);
            plan.Flow(Stream.Waste, (CarriageKind)random.Next(7), random.Next(3000), [.. stops.OrderBy(_ => random.Next())]);
            var clock = Stopwatch.StartNew();
            var space = new FloorSpace(plan.Build());
            foreach (var leg in space.LegRoutes)
            {
                Assert.True(leg.Route is null != leg.Blocked is null, $"seed {seed}");
                if (leg.Route is { } route)
                {
                    Assert.True(route.Path.NumPoints >= 2);
                    space.NarrowestAlong(route, 1500);
                }
            }

            Assert.NotNull(space.Meetings);
            foreach (var room in rooms)
            {
                space.FarthestExit(room, Mover.Person, _ => true);
                Assert.True(space.FreeFloor(room, Mover.Person).IsValid, $"seed {seed}");
            }

            Assert.True(clock.Elapsed.TotalSeconds < 10, $"seed {seed} took {clock.Elapsed}");
        }
    }

    [Fact]
    public void A_shed_with_10000_stations_is_ready_in_seconds()
    {
        var plan = new TestPlan(252_000, 172_000);
        var room = plan.Room("r", 0, 0, 252_000, 172_000);
        plan.Opening("d", null, room, 500, 1500, -100, 0);
        for (int i = 0; i < 10_000; i++)
        {
            double x = 1000 + (i % 120 * 2050), y = 1000 + (i / 120 * 2000);
            plan.Station("s" + i, room, TestPlan.Rectangle(x, y, x + 1400, y + 600));
        }

        var clock = Stopwatch.StartNew();
        var space = new FloorSpace(plan.Build());
        Assert.NotNull(space.Find(room, new(500, 500), room, new(250_000, 170_000), Mover.Person));
        double first = clock.Elapsed.TotalSeconds;
        clock.Restart();
        for (int i = 0; i < 100; i++)
        {
            Assert.NotNull(space.Find(room, new(800 + (i * 2050), 800), room, new(2900 + (i * 2050), 3000), Mover.Person));
        }

        // Far above what it takes (under 1 s, then 0.2 ms each), so that a busy machine does not fail it.
        Assert.True(first < 20, $"first way took {first} s");
        Assert.True(clock.Elapsed.TotalSeconds < 2, $"100 short ways took {clock.Elapsed.TotalSeconds} s");
    }

    private static double Number(Random random) => random.Next(5) == 0 ? random.NextDouble() * 4000 : 50 * random.Next(-10, 90);

    private static Room Room(TestPlan plan, string id, Random random)
    {
        double x = Number(random), y = Number(random), w = random.Next(1, 3000), d = random.Next(1, 2500);
        return plan.Room(id, x, y, x + w, y + d);
    }

    private static void Opening(TestPlan plan, string id, List<Room> rooms, Random random)
    {
        double x = Number(random), y = Number(random), w = random.Next(0, 1500), t = random.Next(0, 200);
        Room? a = random.Next(4) == 0
            ? null
            : rooms[random.Next(rooms.Count)], b = random.Next(4) == 0
            ? null
            : rooms[random.Next(rooms.Count)];
        var kind = (OpeningKind)random.Next(7);
        if (random.Next(2) == 0)
        {
            plan.Opening(id, a, b, x, x + w, y, y + t, kind);
        }
        else
        {
            plan.UprightOpening(id, a, b, y, y + w, x, x + t, kind);
        }
    }
}
