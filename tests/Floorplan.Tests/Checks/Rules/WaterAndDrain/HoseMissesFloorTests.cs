using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.WaterAndDrain;

public sealed class HoseMissesFloorTests
{
    private const string Rule = "hose-misses-floor";

    // The floor is 11 800 long; a person's middle comes within 225 mm of the far corner, and the hose starts 500 mm from the other end.
    private static string Shed(string hose, string more = "") => $"""
        plan "Shed"
          units metric
        shell shed 12000 x 3000 x 2600
        room wash "Wash" dirty from west to east
        door d1 wash to outside, south wall, centred, 1000 x 2050, swings out
        water w1 cold in wash, north wall, 500 from west, height 1200
        {hose}
        drain fd1 floor in wash, centred, 3000 from west, 100
        {more}
        """;

    [Fact]
    public void A_plan_without_hoses_is_not_looked_at() => Assert.Empty(CheckedPlan.Check(Shed(""), Rule));

    [Fact]
    public void A_way_round_a_long_tank_takes_more_hose_than_the_straight_line()
    {
        const string Tank = """
            station tank "Tank" in wash
              size 8000 x 1900 x 1500
              place against north wall, 2500 from west
            """;
        Assert.Empty(CheckedPlan.Check(Shed("hose hz1 on w1, 9.5 m"), Rule));
        var finding = Assert.Single(CheckedPlan.Check(Shed("hose hz1 on w1, 9.5 m", Tank), Rule));
        Assert.Equal(["wash", "hz1"], finding.Things);
    }

    [Fact]
    public void A_second_hose_reaches_what_the_first_does_not()
        => Assert.Empty(
            CheckedPlan.Check(
                Shed("hose hz1 on w1, 5 m", "water w2 cold in wash, north wall, 500 from east, height 1200\nhose hz2 on w2, 5 m"), Rule));

    [Fact]
    public void A_hose_may_come_through_a_door_and_a_shut_room_has_none()
    {
        string two = """
            plan "Two rooms"
              units metric
            shell shed 8000 x 3000 x 2600
            room wash "Wash" dirty from west to 4000
            room cut "Cut" clean from 4000 to east
            partitions thickness 80
            door d1 wash to outside, south wall, 500 from west, 1000 x 2050, swings out
            water w1 cold in wash, north wall, 500 from east, height 1200
            hose hz1 on w1, 8 m

            """;
        Assert.Contains(
            CheckedPlan.Check(two
                + "door d2 cut to outside, south wall, 500 from east, 1000 x 2050, swings out\nhatch h1 wash to cut, centred, 600 x 500, "
                + "sill 900\n", Rule), f => f.Message == "no hose reaches the floor of Cut (cut)");
        Assert.Empty(CheckedPlan.Check(two + "door d2 wash to cut, centred, 900 x 2050, swings wash\n", Rule));
    }

    /// <summary>Two tanks shut off a corner of 1500 x 800: nobody walks there, and the rest of the floor is reached.</summary>
    [Fact]
    public void A_pocket_that_nobody_can_walk_into_is_not_told()
    {
        const string Tanks = """
            station a "A" in wash
              size 600 x 1400 x 1500
              place at 9700, 1400
            station b "B" in wash
              size 1500 x 600 x 1500
              place at 10300, 1400
            """;
        Assert.Empty(CheckedPlan.Check(Shed("hose hz1 on w1, 12 m", Tanks), Rule));
        Assert.Single(CheckedPlan.Check(Shed("hose hz1 on w1, 4 m", Tanks), Rule));
    }

    [Fact]
    public void A_dry_room_is_not_washed()
        => Assert.Empty(CheckedPlan.Check(Shed("hose hz1 on w1, 2 m").Replace("dirty", "dry", StringComparison.Ordinal), Rule));
}
