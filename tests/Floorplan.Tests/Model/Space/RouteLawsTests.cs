using CsCheck;
using Floorplan.Model;
using Floorplan.Model.Space;
using Floorplan.Model.Stations;
using Floorplan.Tests.Model.Space.Support;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using Xunit;

namespace Floorplan.Tests.Model.Space;

/// <summary>What holds for every room, whatever stands in it.</summary>
public class RouteLawsTests
{
    private static readonly Gen<int> seeds = Gen.Int[0, 1_000_000];

    [Fact]
    public void Turning_or_mirroring_the_whole_room_keeps_every_length() => seeds.Sample(
        seed =>
        {
            var random = new Random(seed);
            var (plan, mover) = RandomRooms.One(random);
            var box = plan.Rooms[0].Floor.EnvelopeInternal;
            Coordinate a = RandomRooms.Spot(random, box), b = RandomRooms.Spot(random, box);
            double? length = Length(plan, mover, a, b);
            foreach (var change in new[] { Matrix(0, -1, 1, 0), Matrix(-1, 0, 0, -1), Matrix(-1, 0, 0, 1), Matrix(0, 1, 1, 0) })
            {
                double? changed =
                    Length(Changed(plan, change), mover, change.Transform(a, new Coordinate()), change.Transform(b, new Coordinate()));
                if (length is null != changed is null || Math.Abs((length - changed) ?? 0) > 0.2)
                {
                    return false;
                }
            }

            return true;
        },
        iter: 300);

    [Fact]
    public void Taking_a_thing_away_never_makes_a_way_longer() => seeds.Sample(
        seed =>
        {
            var random = new Random(seed);
            var (plan, mover) = RandomRooms.One(random);
            var before = new FloorSpace(plan);
            var box = plan.Rooms[0].Floor.EnvelopeInternal;
            if (plan.Stations.Count == 0
                || before.Find(plan.Rooms[0], RandomRooms.Spot(random, box), plan.Rooms[0], RandomRooms.Spot(random, box), mover)
                    is not { } route)
            {
                return true;
            }

            var fewer = new FloorSpace(plan with { Stations = [.. plan.Stations.Where((_, i) => i != seed % plan.Stations.Count)] });
            var shorter = fewer.Find(plan.Rooms[0], route.Path.StartPoint.Coordinate, plan.Rooms[0], route.Path.EndPoint.Coordinate, mover);
            return shorter is not null && shorter.LengthMm <= route.LengthMm + 0.1;
        },
        iter: 500);

    [Fact]
    public void There_and_back_are_equally_long() => seeds.Sample(
        seed =>
        {
            var random = new Random(seed);
            var (plan, mover) = RandomRooms.Two(random);
            var space = new FloorSpace(plan);
            Coordinate a = RandomRooms.Spot(random, plan.Rooms[0].Floor.EnvelopeInternal),
                b = RandomRooms.Spot(random, plan.Rooms[1].Floor.EnvelopeInternal);
            var there = space.Find(plan.Rooms[0], a, plan.Rooms[1], b, mover);
            var back = space.Find(plan.Rooms[1], b, plan.Rooms[0], a, mover);
            return there is null == back is null && Math.Abs((there?.LengthMm - back?.LengthMm) ?? 0) < 0.01;
        },
        iter: 300);

    private static AffineTransformation Matrix(double a, double b, double c, double d) => new(a, b, 0, c, d, 0);

    private static double? Length(Plan plan, Mover mover, Coordinate a, Coordinate b) =>
        new FloorSpace(plan).Find(plan.Rooms[0], a, plan.Rooms[0], b, mover)?.LengthMm;

    private static Plan Changed(Plan plan, AffineTransformation change)
    {
        var room = plan.Rooms[0] with { Floor = (Polygon)change.Transform(plan.Rooms[0].Floor) };
        return plan with
        {
            Rooms = [room],
            Shell = plan.Shell with { Outside = (Polygon)change.Transform(plan.Shell.Outside) },
            Stations =
                [.. plan.Stations.Select(
                    s => s with { Room = room, Footprint = (Polygon)change.Transform(s.Footprint), Workers = Array.Empty<WorkerPlace>() })],
        };
    }
}
