using Floorplan.Sizing;
using Floorplan.Sizing.Sizes;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.LightAndAir;

public sealed class AirSizesTests
{
    /// <summary>Two rooms of 3.96 x 4 m and 2.5 m high with a hatch of 0.6 x 0.5 m between them.</summary>
    private const string Two = """
        plan "Scalding"
          units metric
        shell shed 8200 x 4200 x 2500
          walls 100
        room scald "Scalding" dirty from west to 4000
        room dress "Dressing" clean from 4000 to east
        partitions thickness 80
        hatch h1 scald to dress, 1000 from south, 600 x 500, sill 900
        station tank "Scald tank" in scald
          size 1000 x 500 x 900
          place against north wall, centred
          workers 2 south
          stays 1 min
          holds 4 birds
          needs hot 8 L/min at 60 C
        air supply dress 600 m3/h, exhaust scald 600 m3/h
        """;

    /// <summary>ASHRAE 62.1-2016, kitchen: 3.8 L/s for each of 2 people and 0.6 L/s for each of 15.84 m2 are 61.6 m3/h.</summary>
    [Fact]
    public void People_have_fresh_air()
        => Assert.Equal((2 * 0.0038) + (15.84 * 0.0006), Figure(Two, "fresh air for people", "scald"), 1e-6);

    /// <summary>ASHRAE 62.1-2016 in inch-pound: 7.5 cfm a person and 0.12 cfm a square foot.</summary>
    [Fact]
    public void A_plan_in_feet_takes_the_feet_figures()
    {
        string feet = Two.Replace("units metric", "units feet", StringComparison.Ordinal)
            .Replace("8200 x 4200 x 2500", "8200 mm x 4200 mm x 2500 mm", StringComparison.Ordinal)
            .Replace("walls 100", "walls 100 mm", StringComparison.Ordinal).Replace("4000", "4000 mm", StringComparison.Ordinal)
            .Replace("thickness 80", "thickness 80 mm", StringComparison.Ordinal)
            .Replace("1000 from", "1000 mm from", StringComparison.Ordinal)
            .Replace("600 x 500, sill 900", "600 mm x 500 mm, sill 900 mm", StringComparison.Ordinal)
            .Replace("1000 x 500 x 900", "1000 mm x 500 mm x 900 mm", StringComparison.Ordinal);

        Assert.Equal(((2 * 7.5) + (15.84 * 10.7639 * 0.12)) * 0.000471947443, Figure(feet, "fresh air for people", "scald"), 1e-6);
    }

    /// <summary>
    /// By hand: 0.5 m2 at 60 C (19.94 kPa, steam tables) under 25 C and 60 % (1.902 kPa): 0.803 kW at 2358 kJ/kg are 1.23 kg/h; taken up
    /// at 5 g/kg in air of 1.2 kg/m3 that is 204 m3/h.
    /// </summary>
    [Fact]
    public void Steam_of_a_tank_wants_an_exhaust()
    {
        Assert.Equal(1.23, Figure(Two, "vapour of hot tanks", "scald") * 3600, 0.01);
        Assert.Equal(204, Figure(Two, "steam extract", "scald") * 3600, 2.0);
    }

    /// <summary>600 m3/h through a hatch of 0.3 m2: 0.556 m/s.</summary>
    [Fact]
    public void What_fans_leave_over_goes_through_the_hatch()
    {
        Assert.Equal(600 / 3600.0 / 0.3, Figure(Two, "speed of air through doors and hatches", "scald"), 1e-6);
        Assert.StartsWith("dress above scald", Air(Two).Rows.Single(r => r.What == "pressure").Value);
    }

    /// <summary>
    /// By hand, the way of V10 in the utilities reference: 1 / 0.17 of 60 m2 walls, 1 / 0.21 of the ceiling, and 600 m3/h of 0.335 W/m3h
    /// K; 18 C inside. The ground under a shed counts nothing.
    /// </summary>
    [Fact]
    public void A_winter_day_asks_for_heat()
    {
        string winter = Two.Replace("units metric", "units metric\n  climate -12 C, 34 C 40 %", StringComparison.Ordinal);
        double walls = 2 * ((2 * 3.96) + 4) * 2.5;
        double ceiling = 2 * 3.96 * 4;

        Assert.Equal(
            ((walls / 0.17) + (ceiling / 0.21) + (600 * 0.33533)) * 30, Figure(winter, "heating on the winter day", "plan"), 100.0);
        Assert.True(Figure(winter, "cooling on the summer day", "plan") > 0);
        Assert.Equal("yes", Air(winter).Rows.Single(r => r.What == "dew on linings in winter").Value);
    }

    [Fact]
    public void Without_a_climate_it_is_asked_for()
        => Assert.Contains(Air(Two).Missing, m => m.Write == "climate -12 C, 34 C 40 %");

    /// <summary>What the plan says of a fan goes before what the room needs; where it says nothing, that is told.</summary>
    [Fact]
    public void A_fan_without_a_figure_is_taken_as_the_room_needs()
    {
        string silent = Two.Replace("exhaust scald 600 m3/h", "exhaust scald", StringComparison.Ordinal);

        Assert.Equal(204, Figure(silent, "air to draw out", "scald") * 3600, 2.0);
        Assert.Contains(Air(silent).Missing, m => m.Write.StartsWith("air exhaust scald 20", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("at 60 C", "at 500 C")]
    [InlineData("600 m3/h, exhaust", "0 m3/h, exhaust")]
    [InlineData("scald 600 m3/h", "scald 100000 m3/h")]
    [InlineData("units metric", "units metric\n  climate -60 C, 60 C 100 %")]
    [InlineData("units metric", "units metric\n  climate -100 C")]
    public void Whatever_numbers_stand_in_the_file_every_figure_is_a_number(string was, string now)
        => Assert.All(
            Facts(Two.Replace(was, now, StringComparison.Ordinal)).Sizes.Figures, f => Assert.True(double.IsFinite(f.Value), f.ToString()));

    private static double Figure(string text, string name, string of)
        => Air(text).Figures.Single(f => f.Name == name && f.Of == of).Value;

    private static SizedSubject Air(string text) => Facts(text).AirSizes!;

    private static PlanFacts Facts(string text) => CheckedPlan.Facts(CheckedPlan.Plan(text));
}
