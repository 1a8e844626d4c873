using Floorplan.Model;
using Floorplan.Model.Openings;
using Floorplan.Model.Space;
using NetTopologySuite.Geometries;

namespace Floorplan.Tests.Model.Space.Support;

/// <summary>Rooms with things thrown in: flush, touching, overlapping, turned and round, also across walls.</summary>
internal static class RandomRooms
{
    private static readonly double[] widths = [300, 450, 600, 667];

    public static (Plan Plan, Mover Mover) One(Random random)
    {
        double width = 100 * random.Next(40, 90), depth = 100 * random.Next(25, 60);
        var plan = new TestPlan(width, depth);
        var room = plan.Room("r", 0, 0, width, depth);
        Fill(plan, room, random, random.Next(0, 9), 0, width, depth);
        return (plan.Build(), new Mover("m", widths[random.Next(widths.Length)], 1900));
    }

    /// <summary>Two rooms side by side with one or two doors between, and a door to outside from each.</summary>
    public static (Plan Plan, Mover Mover) Two(Random random)
    {
        double width = 100 * random.Next(50, 90), depth = 100 * random.Next(30, 50), split = width / 2;
        var plan = new TestPlan(width, depth);
        var west = plan.Room("west", 0, 0, split - 40, depth);
        var east = plan.Room("east", split + 40, 0, width, depth);
        Fill(plan, west, random, random.Next(0, 5), 0, split - 40, depth);
        Fill(plan, east, random, random.Next(0, 5), split + 40, width, depth);
        for (int i = 0; i < random.Next(1, 3); i++)
        {
            double from = 50 * random.Next(1, (int)(depth / 50) - 20);
            plan.UprightOpening("d" + i, west, east, from, from + 900, split - 40, split + 40);
        }

        plan.Opening("o1", null, west, 500, 1400, -100, 0);
        plan.Opening("o2", east, null, width - 1500, width - 600, depth, depth + 100, random.Next(4) == 0
            ? OpeningKind.Hatch
            : OpeningKind.Door);
        return (plan.Build(), new Mover("m", widths[random.Next(widths.Length)], 1900));
    }

    public static Coordinate Spot(Random random, Envelope box) =>
        new(box.MinX + (random.NextDouble() * box.Width), box.MinY + (random.NextDouble() * box.Height));

    private static void Fill(
        TestPlan plan, Floorplan.Model.Rooms.Room room, Random random, int count, double west, double east, double depth)
    {
        for (int i = 0; i < count; i++)
        {
            // A coarse raster makes things touch, line up and coincide often.
            double w = 100 * random.Next(2, 16), d = 100 * random.Next(2, 10);
            double x = west + (50 * random.Next(-4, (int)((east - west) / 50))), y = 50 * random.Next(-4, (int)(depth / 50));
            var shape = TestPlan.Rectangle(x, y, x + w, y + d);
            plan.Station("s" + room.Id + i, room, random.Next(5) switch
            {
                0 => TestPlan.Turned(shape, random.Next(1, 90)),
                1 => TestPlan.Round(x, y, w),
                _ => shape,
            });
        }
    }
}
