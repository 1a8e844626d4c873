using Floorplan.Checks.Findings;
using Floorplan.Drawing.Sheets.PowerLightAir;
using Floorplan.Sizing;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.LightAndAir;

/// <summary>
/// The box of the engineering reference (D7): five lamps of 4000 lm give 545 lx on 5.898 x 2.352 m, so each gives 109 lx.
/// </summary>
public sealed class SaidLampsTests
{
    [Fact]
    public void Lamps_that_are_said_give_what_the_reference_gets()
    {
        var lamps = Facts("light 500 lux\n  lamps 5 x 4000 lm 36 W").Lamps["cut"];

        Assert.True(lamps.IsSaid);
        Assert.Equal(545, lamps.Reached.Value, 2.0);
        Assert.Equal(5 * 36, lamps.Power.Value, 6);
        Assert.Equal(5, lamps.Places.Count());
    }

    /// <summary>Twice the lamps, and lamps twice as bright, are twice the light.</summary>
    [Theory]
    [InlineData("lamps 10 x 4000 lm")]
    [InlineData("lamps 5 x 8000 lm")]
    public void Light_goes_with_lamps_and_with_their_brightness(string twice)
        => Assert.Equal(2 * Facts("lamps 5 x 4000 lm").Lamps["cut"].Reached.Value, Facts(twice).Lamps["cut"].Reached.Value, 6);

    /// <summary>What the plan does not say is taken at 100 lm/W, and printed as taken.</summary>
    [Fact]
    public void Power_that_is_not_said_is_taken_and_told()
    {
        var lamps = Facts("lamps 5 x 4000 lm").Lamps["cut"];

        Assert.Equal(200, lamps.Power.Value, 6);
        Assert.Contains(lamps.Power.Inputs, i => i is { Name: "what one draws", Source: not null });
    }

    [Fact]
    public void A_room_that_says_lamps_only_is_judged_by_what_they_give()
    {
        Assert.Equal(218, Facts("lamps 2 x 4000 lm").Light["cut"].Level.Value, 2.0);
        Assert.Contains(Check("lamps 2 x 4000 lm", "too-dark"), f => f.Message.Contains("218 lux", StringComparison.Ordinal));
    }

    /// <summary>4 lamps give 436 lx, 87 % of what is said; 5 give all of it. 475 lx is the edge of 5 %.</summary>
    [Theory]
    [InlineData("light 500 lux\n  lamps 5 x 4000 lm", 0)]
    [InlineData("light 500 lux\n  lamps 4 x 4000 lm", 1)]
    [InlineData("light 570 lux\n  lamps 5 x 4000 lm", 0)]
    [InlineData("light 576 lux\n  lamps 5 x 4000 lm", 1)]
    [InlineData("lamps 1 x 4000 lm", 0)]
    public void Lamps_that_do_not_give_the_light_that_is_said_are_told(string room, int told)
        => Assert.Equal(told, Check(room, "lamps-too-few").Count);

    [Fact]
    public void It_says_how_many_would_do()
        => Assert.StartsWith("hang 5 lamps", Assert.Single(Check("light 500 lux\n  lamps 4 x 4000 lm", "lamps-too-few")).Mend);

    [Theory]
    [InlineData("lamps 0 x 4000 lm")]
    [InlineData("lamps 4 x 36 W")]
    [InlineData("lamps 4")]
    [InlineData("lamps 4 x 4000")]
    [InlineData("lamps 99999999 x 4000 lm")]
    public void What_is_no_lamp_is_a_mistake_in_its_line(string room)
    {
        var mistakes = CheckedPlan.Bind(Text(room)).Diagnostics;

        Assert.NotEmpty(mistakes);
        Assert.All(mistakes, m => Assert.Equal(6, m.Span.Position.Line));
    }

    [Fact]
    public void Sheet_5_names_the_lamps_of_a_room()
    {
        var request = DrawnPlans.Request(Text("light 500 lux\n  lamps 5 x 4000 lm"));
        var row = PowerTables.Rooms(request.Facts).Rows.Single(r => r[0].Text == "Cutting");

        Assert.Equal("5 of 4000 lm", row[2].Text);
    }

    private static PlanFacts Facts(string room) => CheckedPlan.Facts(CheckedPlan.Plan(Text(room)));

    private static IReadOnlyList<Finding> Check(string room, string rule) => CheckedPlan.Check(Text(room), rule);

    private static string Text(string room) => $"""
        plan "Box"
          units metric
        shell shed 6098 x 2552 x 2390
          walls 100
        room cut "Cutting" clean from west to east
          {room}
        door d1 cut to outside, south wall, 300 from west, 1000 x 2050, swings out, closes itself, opens from inside
        station bench "Bench" in cut, 1500 x 600 x 900, against north wall, 3000 from west, worker south
        """;
}
