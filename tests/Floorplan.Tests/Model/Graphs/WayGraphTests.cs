using Floorplan.Model.Graphs;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Model.Graphs;

/// <summary>Searches over places, against answers counted by hand.</summary>
public sealed class WayGraphTests
{
    // a -> b -> c -> d, with a short cut a -> d by way of e, a circle c -> b, and f on its own.
    private static readonly WayGraph Graph =
        new(["a", "b", "c", "d", "e", "f"], [new("a", "b"), new("b", "c"), new("c", "d"), new("a", "e"), new("e", "d"), new("c", "b")]);

    [Fact]
    public void The_way_with_the_fewest_steps()
    {
        var ways = Graph.Fewest("a");
        Assert.Equal(["a", "e", "d"], ways["d"]);
        Assert.Equal(["a", "b", "c"], ways["c"]);
        Assert.False(ways.ContainsKey("f"));
    }

    [Fact]
    public void What_leads_to_an_end_and_what_does_not()
    {
        Assert.Equal(["a", "b", "c"], Graph.LeadingTo(["b"]).Order());
        Assert.Equal(
            ["a", "d", "e", "f", "b", "c"], Graph.LeadingTo(["d", "f"]).OrderBy(p => "adefbc".IndexOf(p[0], StringComparison.Ordinal)));
        Assert.Equal(["nowhere"], Graph.LeadingTo(["nowhere"]));
    }

    [Fact]
    public void Groups_in_the_order_of_their_first_places() => Assert.Equal([["a", "b", "c", "d", "e"], ["f"]], Graph.Groups());

    [Fact]
    public void Rooms_through_doors_that_people_walk_through()
    {
        var plan = CheckedPlan.Plan("""
            plan "Three rooms"
              units metric
            shell shed 9000 x 3000 x 2500
            room west "West" dry from west to 3000
            room middle "Middle" dry from 3000 to 6000
            room east "East" dry from 6000 to east
            partitions thickness 80
            door d1 west to outside, west wall, 1000 from south, 900 x 2050, swings out
            door d2 west to middle, 1000 from south, 900 x 2050, swings west
            hatch h1 middle to east, 1000 from south, 700 x 500, sill 950
            """);
        Assert.Equal([RoomWays.Outside, "west", "middle"], RoomWays.OnFoot(plan).Fewest(RoomWays.Outside)["middle"]);
        Assert.Equal([["west", "middle"], ["east"]], RoomWays.Inside(plan).Groups());
        Assert.DoesNotContain("east", RoomWays.OnFoot(plan).LeadingTo([RoomWays.Outside]));
    }

    /// <summary>Rules ask the graph. A search of their own from room to room would answer otherwise one day.</summary>
    [Fact]
    public void No_rule_searches_by_itself() => Assert.DoesNotContain(
        Repository.Sources("src/Floorplan.Checks"), f => File.ReadAllText(f).Contains("Queue<", StringComparison.Ordinal));
}
