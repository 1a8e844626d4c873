using Floorplan.Model;
using Floorplan.Model.Shapes;
using Floorplan.Model.Space;
using Floorplan.Tests.Model.Space.Support;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Distance;
using Xunit;

namespace Floorplan.Tests.Model.Space;

public class NarrowGapTests
{
    [Fact]
    public void The_aisle_between_two_benches_is_the_narrowest()
    {
        var (space, route) = Aisle(700);
        var (width, at) = space.NarrowestAlong(route, 1500);
        Assert.Equal(700, width, 3);
        Assert.Equal(950, at.Y, 1);
        Assert.InRange(at.X, 2000, 4000);
    }

    [Fact]
    public void Nothing_is_reported_beyond_the_width_that_is_looked_at()
    {
        var (space, route) = Aisle(700);
        Assert.True(double.IsInfinity(space.NarrowestAlong(route, 600).WidthMm));
    }

    [Fact]
    public void A_diagonal_gap_is_measured_from_corner_to_corner()
    {
        var plan = new TestPlan(6000, 4000);
        var room = plan.Room("r", 0, 0, 6000, 4000);
        plan.Station("a", room, TestPlan.Rectangle(0, 0, 2700, 1800));
        plan.Station("b", room, TestPlan.Rectangle(3300, 2600, 6000, 4000));
        var space = new FloorSpace(plan.Build());
        var route = space.Find(room, new(1000, 3000), room, new(5000, 1000), Mover.Person)!;

        // 600 mm east and 800 mm north between the two corners: 1000 mm.
        Assert.Equal(1000, space.NarrowestAlong(route, 1500).WidthMm, 3);
    }

    /// <summary>A bench in a corner, used from its end: bench and wall meet there, and nobody walks between them.</summary>
    [Fact]
    public void An_inner_corner_is_no_gap()
    {
        var plan = new TestPlan(6000, 2600);
        var room = plan.Room("r", 0, 0, 6000, 2600);
        plan.Station("bench", room, TestPlan.Rectangle(5400, 1700, 6000, 2600));
        var space = new FloorSpace(plan.Build());
        var route = space.Find(room, new(5175, 2150), room, new(1000, 1300), Mover.Person)!;
        Assert.True(space.NarrowestAlong(route, 914).WidthMm > 914);
    }

    [Fact]
    public void A_doorway_and_a_thing_on_wheels_do_not_count()
    {
        var plan = new TestPlan(6000, 3000);
        var west = plan.Room("west", 0, 0, 2960, 3000);
        var east = plan.Room("east", 3040, 0, 6000, 3000);
        plan.UprightOpening("d", west, east, 1000, 1800, 2960, 3040);
        plan.Station("cart", east, TestPlan.Rectangle(4000, 2000, 4500, 2500), movable: true);
        var space = new FloorSpace(plan.Build());
        var route = space.Find(west, new(1000, 1400), east, new(5000, 1400), Mover.Person)!;
        Assert.True(space.NarrowestAlong(route, 1200).WidthMm > 1200);
    }

    /// <summary>Check value: every point 50 mm apart, every pair of things, nearest points by NetTopologySuite.</summary>
    [Fact]
    public void Passing_over_points_that_cannot_hold_a_gap_changes_nothing_in_500_random_rooms()
    {
        int gaps = 0;
        for (int seed = 0; seed < 500; seed++)
        {
            var random = new Random(seed);
            var (plan, mover) = RandomRooms.One(random);
            var room = plan.Rooms[0];
            var space = new FloorSpace(plan);
            double upTo = 100 * random.Next(5, 20);
            if (space.Find(room, Spot(), room, Spot(), mover) is not { } route)
            {
                continue;
            }

            // Two things at just 120 degrees lie opposite or not by rounding alone: either answer will do.
            double least = PlainSearch(plan, route, upTo, 1e-3), most = PlainSearch(plan, route, upTo, -1e-3);
            double found = space.NarrowestAlong(route, upTo).WidthMm;
            Assert.True(found >= least - 0.01 && found <= most + 0.01, $"seed {seed}: {found}, not {least} to {most}");
            gaps += least == most && double.IsFinite(found) ? 1 : 0;

            Coordinate Spot() => RandomRooms.Spot(random, room.Floor.EnvelopeInternal);
        }

        Assert.True(gaps > 100, $"{gaps} gaps");
    }

    private static double PlainSearch(Plan plan, Route route, double upTo, double slack)
    {
        var walls = new[] { plan.Rooms[0].Floor, plan.Shell.Outside }.Select(r => r.Coordinates)
            .SelectMany(rim => rim.Zip(rim.Skip(1), (a, b) => (Geometry)Shape.Factory.CreateLineString([a, b])));
        List<Geometry> things = [.. plan.Stations.Select(s => s.Footprint), .. walls];
        double best = double.PositiveInfinity;
        var points = route.Path.Coordinates;
        foreach (var (a, b) in points.Zip(points.Skip(1)).Where(p => p.First.Distance(p.Second) > 0))
        {
            int pieces = (int)Math.Ceiling(a.Distance(b) / 50);
            for (int k = a.Equals2D(points[0]) ? 0 : 1; k <= pieces; k++)
            {
                var p = new Coordinate(a.X + ((b.X - a.X) * k / pieces), a.Y + ((b.Y - a.Y) * k / pieces));
                var beside = things.Select(t => DistanceOp.NearestPoints(t, Shape.Factory.CreatePoint(p))[0])
                    .Select(q => (X: q.X - p.X, Y: q.Y - p.Y, Far: q.Distance(p)))
                    .Where(q => q.Far > 1e-4 && Math.Abs(Across(q.X, q.Y)) >= 0.5 * q.Far).ToList();
                var widths = from l in beside
                             from r in beside
                             where Across(l.X, l.Y) > 0
                                 && Across(r.X, r.Y) < 0
                                 && (l.X * r.X) + (l.Y * r.Y) <= (-0.5 * l.Far * r.Far) + slack
                             select Math.Sqrt(((l.X - r.X) * (l.X - r.X)) + ((l.Y - r.Y) * (l.Y - r.Y)));
                best = Math.Min(best, widths.Where(w => w <= upTo).DefaultIfEmpty(double.PositiveInfinity).Min());
            }

            double Across(double x, double y) => (((b.X - a.X) * y) - ((b.Y - a.Y) * x)) / a.Distance(b);
        }

        return best;
    }

    private static (FloorSpace Space, Route Route) Aisle(double width)
    {
        var plan = new TestPlan(6000, 1900);
        var room = plan.Room("r", 0, 0, 6000, 1900);
        plan.Station("north", room, TestPlan.Rectangle(2000, 950 + (width / 2), 4000, 1900));
        plan.Station("south", room, TestPlan.Rectangle(2000, 0, 4000, 950 - (width / 2)));
        var space = new FloorSpace(plan.Build());
        return (space, space.Find(room, new(1000, 950), room, new(5000, 950), Mover.Person)!);
    }
}
