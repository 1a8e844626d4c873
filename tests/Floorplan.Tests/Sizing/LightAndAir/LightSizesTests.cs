using System.Globalization;
using Floorplan.Sizing;
using Floorplan.Sizing.Sizes;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.LightAndAir;

public sealed class LightSizesTests
{
    /// <summary>
    /// As in a 20 ft box of the engineering reference (D7): 5.898 x 2.352 m with lamps 1.39 m over the work, which is 2.39 m of ceiling
    /// less 1 m.
    /// </summary>
    private const string Box = """
        plan "Box"
          units metric
        shell shed 6098 x 2552 x 2390
          walls 100
        room cut "Cutting" clean from west to east
          light 500 lux
        door d1 cut to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself, opens from inside
        """;

    /// <summary>K 1.210 and 0.540 as there; with 0.7 for a room that is washed 4.58 lamps, so 5, which give 545 lx.</summary>
    [Fact]
    public void Lamps_of_a_container_are_those_of_the_reference()
    {
        var light = Light(Box);

        Assert.Equal(1.210, light.Figures.Single(f => f.Name == "room index").Value, 0.0005);
        Assert.Equal(5, light.Figures.Single(f => f is { Name: "lamps", Of: "cut" }).Value);
        Assert.Equal(545, light.Figures.Single(f => f.Name == "light reached").Value, 2.0);
        Assert.Contains("0.2 kW", light.Rows[0].Remark);
    }

    /// <summary>The lumen method gives at least what is asked, whatever the room.</summary>
    [Theory]
    [InlineData(6000, 2500, 150)]
    [InlineData(12_000, 9000, 540)]
    [InlineData(1300, 1200, 220)]
    [InlineData(20_000, 2400, 1000)]
    public void The_level_that_is_asked_is_reached(int length, int width, int lux)
    {
        var light = Light(Box
            .Replace("6098 x 2552", string.Create(CultureInfo.InvariantCulture, $"{length} x {width}"), StringComparison.Ordinal)
            .Replace("500 lux", string.Create(CultureInfo.InvariantCulture, $"{lux} lux"), StringComparison.Ordinal)
            .Replace("300 from west, 1000", "100 from west, 700", StringComparison.Ordinal));

        Assert.True(light.Figures.Single(f => f.Name == "light reached").Value >= lux);
    }

    /// <summary>EN 1838:2013: 1 lx along the middle of a way out.</summary>
    [Fact]
    public void The_way_out_has_light_when_the_power_fails()
    {
        var row = Light(Box).Rows.Single(r => r.What == "emergency light");

        Assert.Equal("cut", row.Value);
        Assert.Contains("1 lux", row.Remark);
    }

    [Fact]
    public void A_room_without_a_level_is_told_with_what_to_write()
    {
        var light = Light(Box.Replace(
            "west to east\n", "west to 3000\n", StringComparison.Ordinal) + "\nroom rest \"Rest\" dry from 3000 to east");

        Assert.Contains(light.Missing, m => m.Write == "light rest 220 lux");
    }

    [Fact]
    public void A_level_that_no_lamp_gives_is_told()
        => Assert.Contains(Light(Box.Replace("500 lux", "0 lux", StringComparison.Ordinal)).Missing, m => m.Write == "light cut 540 lux");

    [Theory]
    [InlineData("500 lux", "0 lux")]
    [InlineData("500 lux", "10000 lux")]
    [InlineData("x 2390", "x 2060")]
    public void Whatever_numbers_stand_in_the_file_every_figure_is_a_number(string was, string now)
        => Assert.All(
            Light(Box.Replace(was, now, StringComparison.Ordinal)).Figures, f => Assert.True(double.IsFinite(f.Value), f.ToString()));

    [Fact]
    public void A_plan_that_says_nothing_of_light_has_no_lamps()
        => Assert.Null(Facts(Box.Replace("  light 500 lux\n", "", StringComparison.Ordinal)).LightSizes);

    private static SizedSubject Light(string text) => Facts(text).LightSizes!;

    private static PlanFacts Facts(string text) => CheckedPlan.Facts(CheckedPlan.Plan(text));
}
