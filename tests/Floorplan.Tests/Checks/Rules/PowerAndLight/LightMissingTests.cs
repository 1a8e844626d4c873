using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.PowerAndLight;

public sealed class LightMissingTests
{
    [Fact]
    public void A_plan_that_says_nothing_of_light_is_left_in_peace() => Assert.Empty(Found("", ""));

    [Fact]
    public void One_room_lit_and_the_other_forgotten_is_found()
        => Assert.Equal(["gut"], Assert.Single(Found("", "light pack 540 lux")).Things);

    [Fact]
    public void Light_said_in_the_room_itself_counts() => Assert.Empty(Found("  light 220 lux", "light pack 540 lux"));

    [Fact]
    public void Lamps_said_in_the_room_count() => Assert.Empty(Found("  lamps 4 x 4000 lm", "light pack 540 lux"));

    [Fact]
    public void A_store_where_nobody_works_may_be_left_out() => Assert.Empty(Found("", "light pack 540 lux, gut 220 lux"));

    [Fact]
    public void The_line_that_it_proposes_mends_it_and_is_bright_enough()
    {
        string line = Assert.Single(Found("", "light pack 540 lux")).NewLine!;

        Assert.Equal("light gut 540 lux", line);
        Assert.Empty(Found("", "light pack 540 lux\n" + line));
    }

    private static IReadOnlyList<Floorplan.Checks.Findings.Finding> Found(string inRoom, string light) => CheckedPlan.Check($"""
        plan "Roach unit"
          units metric
        shell shed 12000 x 3000 x 2500
        room gut "Gutting" dirty from west to 4000
        {inRoom}
        room pack "Packing" clean from 4000 to 8000
        room store "Cartons" dry from 8000 to east
        station bench "Gutting bench" in gut, 1500 x 600 x 900, against north wall, 1000 from west, worker south
        station table "Packing table" in pack, 1500 x 600 x 900, against north wall, 1000 from west, worker south
        {light}
        """, "light-missing");
}
