using Floorplan.Sizing.CarryingIn;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.RoomAndPlace;

public sealed class BringingInTests
{
    private const string Corridor = """
        plan "Store"
          units metric
        shell shed 6200 x 1500 x 2500
        room hold "Hold" dry from west to east
        door d1 hold to outside, east wall, centred, 1100 x 2050, swings out
        """;

    /// <summary>A room as deep as a tank, with a door between two tanks that neither can reach past the other.</summary>
    private const string TwoTanks = """
        plan "Tank room"
          units metric
        shell shed 2800 x 1600 x 2500
        room tanks "Tanks" dry from west to east
        door d1 tanks to outside, south wall, centred, 1300 x 2050, swings out
        station a "Tank A" in tanks, 1200 x 1200 x 1500, corner south-west
        """;

    [Fact]
    public void What_stands_behind_goes_in_before_what_fills_the_way()
    {
        var order = BringingIn.Of(CheckedPlan.Plan(Corridor + """

            store near "Near rack" in hold, 1000 x 1000 x 1800, against south wall, 4000 from west
            store far "Far rack" in hold, 800 x 800 x 1800, against south wall, 200 from west
            """));

        Assert.Equal(["far", "near"], order.Steps.Select(s => s.Station.Id));
        Assert.Equal(["near"], order.Steps[0].Ahead.Select(s => s.Id));
        Assert.Empty(order.Stuck);
    }

    [Fact]
    public void With_room_to_pass_the_broadest_goes_first()
    {
        var order = BringingIn.Of(CheckedPlan.Plan(Corridor + """

            store small "Box" in hold, 400 x 300 x 600, against south wall, 4000 from west
            store large "Rack" in hold, 800 x 800 x 1800, against north wall, 200 from west
            """));

        Assert.Equal(["large", "small"], order.Steps.Select(s => s.Station.Id));
        Assert.All(order.Steps, s => Assert.Empty(s.Ahead));
    }

    [Fact]
    public void Two_that_block_each_other_are_one_finding()
    {
        string both = TwoTanks + "\nstation b \"Tank B\" in tanks, 1200 x 1200 x 1500, corner south-east";

        var finding = Assert.Single(CheckedPlan.Check(both, "will-not-go-in"));

        Assert.Equal(["a", "b"], finding.Things);
        Assert.Contains("block each other's way in", finding.Message);
    }

    [Fact]
    public void Alone_each_goes_in() => Assert.Empty(CheckedPlan.Check(TwoTanks, "will-not-go-in"));

    [Fact]
    public void On_wheels_the_other_is_rolled_out_of_the_way()
        => Assert.Empty(
            CheckedPlan.Check(TwoTanks
                + "\nstation b \"Tank B\" in tanks, 1200 x 1200 x 1500, corner south-east, on wheels", "will-not-go-in"));

    [Fact]
    public void What_no_door_passes_comes_first_while_the_wall_is_open()
    {
        var order = BringingIn.Of(CheckedPlan.Plan(Corridor + """

            store box "Box" in hold, 400 x 300 x 600, against south wall, 4500 from west
            store kiln "Kiln" in hold, 1200 x 1200 x 2000, against south wall, 200 from west
            """));

        Assert.Equal(["kiln", "box"], order.Steps.Select(s => s.Station.Id));
        Assert.Equal("d1", order.Steps[0].Wall!.Id);
    }

    [Fact]
    public void What_a_partition_keeps_out_comes_before_that_partition()
    {
        var step = Assert.Single(BringingIn.Of(CheckedPlan.Plan(WillNotGoInTests.BehindPartition)).Steps);

        Assert.Equal("d2", step.Wall!.Id);
    }

    /// <summary>
    /// Cupboards of 1000 x 1000 leave passages 1000 wide, along the south wall and along the east wall to the door. By the textbook 2
    /// (1000 sqrt 2 - 700) =
    /// 1428 mm goes round between them, so that a longer table is there before the cupboard at the corner; a shorter one need not be.
    /// </summary>
    [Theory]
    [InlineData(2400, true)]
    [InlineData(1000, false)]
    public void A_long_table_goes_in_before_what_makes_a_corner_of_its_way(int length, bool before)
    {
        var cupboards =
            from x in Enumerable.Range(0, 4)
            from y in Enumerable.Range(
                1, 2)
            select $"store c{x}{y} \"Cupboard\" in hold, 1000 x 1000 x 1800, at {x * 1000}, {y * 1000}\n";
        var order = BringingIn.Of(CheckedPlan.Plan($"""
            plan "Store"
              units metric
            shell shed 5200 x 3200 x 2500
            room hold "Hold" dry from west to east
            door d1 hold to outside, north wall, 50 from east, 1100 x 2050, swings out
            {string.Concat(cupboards)}
            station table "Table" in hold
              size {length} x 700 x 1100
              place against south wall, 100 from west
            """));

        var steps = order.Steps.Select(s => s.Station.Id).ToList();
        Assert.Empty(order.Stuck);
        Assert.Equal(before, order.Steps.Any(s => s.Station.Id == "table" && s.Ahead.Any(a => a.Id == "c31")));
        Assert.Equal(before, steps.IndexOf("table") < steps.IndexOf("c31"));
    }
}
