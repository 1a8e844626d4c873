using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.PowerAndLight;

/// <summary>What the rules of power, light and air find that has no figure, and where they stay silent.</summary>
public sealed class PowerRuleTests
{
    private const string Room = """
        plan "Power"
          units metric
          code us
          plant retail
          trade poultry
        shell shed 6000 x 3000 x 2600
        room wet "Wash" dirty from west to east
        door d1 wet to outside, south wall, 300 from west, 1000 x 2050, swings out

        """;

    [Theory]
    [InlineData("16 A 230 V", 1)]
    [InlineData("16 A 230 V, gfci", 0)]
    [InlineData("16 A 230 V, rcd", 0)]
    [InlineData("50 A 230 V single-phase", 1)]
    [InlineData("60 A 230 V single-phase", 0)]
    [InlineData("100 A 208 V three-phase", 1)]
    [InlineData("125 A 208 V three-phase", 0)]
    public void Outlets_of_a_washed_room_need_protection_up_to_the_sizes_of_NEC_210_8_B(string rating, int found) =>
        Assert.Equal(
            found, CheckedPlan.Check(Room
                + $"outlet x1 in wet, north wall, 900 from west, height 1100, {rating}", "outlet-unprotected").Count);

    [Theory]
    [InlineData("32 A 400 V three-phase", 1)]
    [InlineData("63 A 400 V three-phase", 0)]
    public void In_Europe_they_need_it_up_to_the_size_of_IEC_60364_4_41(string rating, int found) =>
        Assert.Equal(
            found, CheckedPlan.Check(Eu(Room)
                + $"outlet x1 in wet, north wall, 900 from west, height 1100, {rating}", "outlet-unprotected").Count);

    [Fact]
    public void A_sink_in_another_room_is_not_near()
    {
        string text = """
            plan "Two rooms"
              units metric
            shell shed 6000 x 3000 x 2600
            room pack "Packing" dry from west to 3000
            room lobby "Lobby" staff from 3000 to east
            partitions thickness 80
            door d1 pack to outside, south wall, 300 from west, 1000 x 2050, swings out
            door d2 lobby to outside, south wall, 300 from east, 1000 x 2050, swings out
            sink s1 hand in lobby, 400 x 350 x 900, against north wall, 100 from west
            outlet x1 in pack, north wall, 300 from east, height 1100, 16 A 230 V
            """;

        Assert.Empty(CheckedPlan.Check(text, "outlet-unprotected"));
    }

    [Fact]
    public void A_switch_behind_a_tall_thing_is_found_at_any_height()
    {
        var finding = Assert.Single(CheckedPlan.Check(Room + """
            switch sw1 in wet, north wall, 2500 from west, height 1100
            store rack "Rack" in wet, 1200 x 300 x 1800, against north wall, 2000 from west
            """, "switch-out-of-reach"));

        Assert.Equal("Rack (rack) stands before switch sw1", finding.Message);
    }

    [Theory]
    [InlineData("place 2000 from west, 400 from north")] // somebody stands between
    [InlineData("place against north wall, 3000 from west")] // beside it
    [InlineData("place against north wall, 2000 from west\n  on wheels")]
    [InlineData("place against north wall, 2000 from west\n  hung, underside 1500")]
    public void What_leaves_the_way_to_a_switch_free_is_no_hindrance(string place) =>
        Assert.Empty(CheckedPlan.Check(Room + $"""
            switch sw1 in wet, north wall, 2500 from west, height 1100
            station tank "Tank" in wet
              size 1000 x 900 x 1000
              {place}
            """, "switch-out-of-reach"));

    [Fact]
    public void A_room_that_says_its_light_itself_is_measured_too()
    {
        string text = Room.Replace("from west to east", "from west to east\n  light 100 lux", StringComparison.Ordinal)
            + "station bench in wet, 1800 x 600 x 900, against north wall, centred, worker south";

        var finding = Assert.Single(CheckedPlan.Check(text, "too-dark"));

        Assert.Equal(100, finding.Measured);
        Assert.Contains("6-303.11", finding.Limit);
    }

    [Fact]
    public void Nothing_is_said_of_light_and_air_that_the_plan_does_not_tell()
    {
        var found = CheckedPlan.Check(Room + "air exhaust wet");

        Assert.DoesNotContain(found, f => f.Rule is "too-dark" or "too-little-air");
    }

    [Theory]
    [InlineData("air supply wet 300 m3/h, exhaust wet 20 m3/h", 0)]
    [InlineData("air supply wet 60 m3/h, exhaust wet 60 m3/h", 1)] // the same air, not twice as much
    public void What_is_blown_in_is_drawn_out_again(string air, int found)
        => Assert.Equal(found, CheckedPlan.Check(Room + air, "too-little-air").Count);

    [Fact]
    public void Figures_are_told_in_the_units_of_the_plan()
    {
        string feet = Room.Replace("units metric", "units feet", StringComparison.Ordinal)
            .Replace("6000 x 3000 x 2600", "20 ft x 10 ft x 8 ft", StringComparison.Ordinal)
            .Replace("300 from west, 1000 x 2050", "12 from west, 36 x 80", StringComparison.Ordinal);
        var light =
            Assert.Single(
                CheckedPlan.Check(feet
                    + "light wet 20 fc\nstation bench in wet, 72 x 24 x 36, against north wall, centred, worker south", "too-dark"));
        var air = Assert.Single(CheckedPlan.Check(feet + "air exhaust wet 40 cfm", "too-little-air"));

        Assert.StartsWith("Wash (wet) has 20 fc of light", light.Message, StringComparison.Ordinal);
        Assert.Contains("limit 50 fc", light.Limit);
        Assert.Contains("40 cfm", air.Message);
    }

    private static string Eu(string text) => text.With("code eu");
}
