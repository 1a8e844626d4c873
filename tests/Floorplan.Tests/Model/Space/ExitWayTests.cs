using Floorplan.Model.Openings;
using Floorplan.Model.Space;
using Floorplan.Model.Space.Free;
using Floorplan.Tests.Model.Space.Support;
using Xunit;

namespace Floorplan.Tests.Model.Space;

/// <summary>
/// Ways out come from one search that starts at all exits. Check values: a search of its own for each place and each exit,
/// which <see cref="ShortestRouteTests"/> hold against a visibility graph.
/// </summary>
public class ExitWayTests
{
    [Fact]
    public void The_way_out_is_the_shortest_of_the_ways_to_each_exit_in_400_random_plans()
    {
        int found = 0, none = 0;
        for (int seed = 0; seed < 400; seed++)
        {
            var random = new Random(seed);
            var (plan, mover) = RandomRooms.Two(random);
            var space = new FloorSpace(plan);
            foreach (var room in plan.Rooms)
            {
                for (int k = 0; k < 4; k++)
                {
                    var spot = RandomRooms.Spot(random, room.Floor.EnvelopeInternal);
                    var way = space.FindExit(room, spot, mover, IsExit);
                    var single = plan.Openings.Where(IsExit)
                        .Select(o => space.Find(room, spot, null, Outside(o, mover), mover, p => IsInner(p) || IsExit(p)))
                        .OfType<Route>().MinBy(r => r.LengthMm);
                    Assert.True((way is null) == (single is null), $"seed {seed}");
                    if (way is null || single is null)
                    {
                        none++;
                        continue;
                    }

                    found++;
                    Assert.True(Math.Abs(way.LengthMm - single.LengthMm) < 0.05, $"seed {seed}: {way.LengthMm} and {single.LengthMm}");
                    Assert.True(way.Path.StartPoint.Distance(single.Path.StartPoint) < 1e-6, $"seed {seed}: starts elsewhere");
                    Assert.Equal(room.Id, way.Rooms[0]?.Id);
                    Assert.Null(way.Rooms[^1]);
                    Assert.Equal(way.Rooms.Count - 1, way.Openings.Count);
                }
            }
        }

        Assert.True(found > 1500 && none > 20, $"{found} ways, {none} without");
    }

    [Fact]
    public void Another_choice_of_exits_is_answered_anew()
    {
        var plan = new TestPlan(10_000, 3000);
        var room = plan.Room("r", 0, 0, 10_000, 3000);
        plan.Opening("near", null, room, 1000, 2000, -100, 0);
        plan.Opening("far", null, room, 8000, 9000, -100, 0);
        var space = new FloorSpace(plan.Build());
        foreach (string id in new[] { "near", "far", "near" })
        {
            Assert.Equal(id, space.FindExit(room, new(1500, 1500), Mover.Person, o => o.Id == id)!.Openings.Single().Id);
        }
    }

    private static bool IsExit(Opening opening) => !IsInner(opening) && opening.Kind == OpeningKind.Door;

    private static bool IsInner(Opening opening) => opening.RoomA is not null && opening.RoomB is not null;

    /// <summary>One step of 300 mm outside the door, as <see cref="FloorMap"/> says.</summary>
    private static NetTopologySuite.Geometries.Coordinate Outside(Opening opening, Mover mover) =>
        new Passage(opening, 0).Before(null, HalfWidth.Of(mover) + 300);
}
