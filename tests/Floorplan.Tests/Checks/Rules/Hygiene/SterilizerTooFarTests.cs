using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class SterilizerTooFarTests
{
    [Fact]
    public void None_in_the_room_is_found_even_when_one_is_behind_the_wall()
        => Assert.Contains(
            "Draw (draw) has none",
            Assert.Single(
                CheckedPlan.Check(
                    Plan("needs sterilizer", "sink z1 sterilizer in pack, 300 x 300, against north wall, 100 from west"),
                    "sterilizer-too-far")).Message);

    [Fact]
    public void A_station_that_asks_for_none_is_left_in_peace()
        => Assert.Empty(CheckedPlan.Check(Plan("needs cold 4 L/min", ""), "sterilizer-too-far"));

    [Fact]
    public void A_hand_sink_is_no_sterilizer()
        => Assert.Single(
            CheckedPlan.Check(
                Plan("needs sterilizer", "sink s1 hand in draw, 300 x 300, against north wall, 2000 from west"), "sterilizer-too-far"));

    private static string Plan(string needs, string sink) => $"""
        plan "Pheasant unit"
          units metric
        shell shed 9000 x 3000 x 2500
        room draw "Draw" clean from west to 4000
        room pack "Pack" clean from 4000 to east
        door d1 draw to outside, south wall, 500 from west, 900 x 2050, swings out
        station bench "Drawing bench" in draw
          size 1200 x 600 x 900
          place against north wall, 100 from west
          worker south
          {needs}
        {sink}
        """;
}
