using Floorplan.Sizing.LightAndAir;
using Xunit;

namespace Floorplan.Tests.Sizing.LightAndAir;

/// <summary>Sun, ducts, open water and lamps against worked examples.</summary>
public sealed class AirFormulaTests
{
    /// <summary>
    /// ASHRAE's sol-air temperature with ho 17 W/m2K, 1000 W/m2, 35 C and a roof: 83.9 C with an absorptance of 0.9 and 48.6 C with 0.3
    /// (worked out in the engineering reference, D12).
    /// </summary>
    [Theory]
    [InlineData(0.9, 83.9)]
    [InlineData(0.3, 48.6)]
    public void A_dark_roof_is_far_hotter_than_a_light_one(double absorbs, double celsius)
        => Assert.Equal(celsius, SolAir.Temperature(35, absorbs / 17, 1000, SolAir.SkyOnRoof), 0.05);

    /// <summary>ASHRAE α/ho 0.30 and 0.15 h ft2 °F/Btu.</summary>
    [Fact]
    public void What_a_surface_takes_is_that_of_the_handbook()
    {
        const double Unit = 0.17611;
        Assert.Equal(0.30 * Unit, SolAir.Dark, 0.001);
        Assert.Equal(0.15 * Unit, SolAir.Light, 0.001);
    }

    /// <summary>A published duct sheet: 350 x 200 mm, 500 L/s, friction 0.0191: 7.14 m/s, 31 Pa, 2.3 Pa/m and 286.4 mm round.</summary>
    [Fact]
    public void A_duct_of_a_published_sheet()
    {
        double speed = 0.5 / (0.35 * 0.2);

        Assert.Equal(7.14, speed, 0.005);
        Assert.Equal(31, Duct.VelocityPressure(speed), 0.5);
        Assert.Equal(2.3, Duct.LossPerMetre(0.0191, speed, Duct.Hydraulic(0.35, 0.2)), 0.01);
        Assert.Equal(0.2864, Duct.Round(0.35, 0.2), 0.0001);
    }

    /// <summary>
    /// ASHRAE's pool equation over still air of 15.6 C and 50 %, worked out apart from this program (utilities reference, H5); the table
    /// of losses from open tanks has 2.08 kW/m2 of evaporation at 60 C, 23 % more, so that they agree within a quarter.
    /// </summary>
    [Theory]
    [InlineData(50, 1020)]
    [InlineData(55, 1324)]
    [InlineData(60, 1696)]
    [InlineData(65, 2150)]
    public void Open_water_gives_off_heat_with_its_steam(double celsius, double watts)
        => Assert.Equal(watts, OpenWater.HeatPerArea(celsius, 0.5 * Psychrometrics.Saturation(15.6)), watts * 0.01);

    [Fact]
    public void It_agrees_with_the_table_of_open_tanks_within_a_quarter()
        => Assert.InRange(OpenWater.HeatPerArea(60, 0.5 * Psychrometrics.Saturation(15.6)), 2080 * 0.75, 2080 * 1.25);

    /// <summary>Steam tables: 2358 kJ/kg at 60 C and 2257 at 100 C (from memory).</summary>
    [Theory]
    [InlineData(60, 2358)]
    [InlineData(100, 2257)]
    public void Heat_of_vapour_is_that_of_steam_tables(double celsius, double kilojoules)
        => Assert.Equal(kilojoules, OpenWater.Latent(celsius) / 1000, kilojoules * 0.005);

    /// <summary>A published hall: 60 x 24 m, 200 lx, 18 000 lm, 0.4, 0.75: 53.33 lamps, so 54.</summary>
    [Fact]
    public void Lamps_of_a_published_hall()
        => Assert.Equal(53.33, LumenMethod.Lamps(200, 60 * 24, 18_000, 0.4, 0.75), 0.005);

    /// <summary>A published room: 6 x 9 m, 300 lx, 0.66, 0.8 and 4000 lm: 7.67 lamps, so 8.</summary>
    [Fact]
    public void Lamps_of_a_published_room() => Assert.Equal(7.67, LumenMethod.Lamps(300, 54, 4000, 0.66, 0.8), 0.005);

    /// <summary>The table of one open batten, 70/50/20, at its own entries.</summary>
    [Theory]
    [InlineData(0.75, 0.43)]
    [InlineData(2, 0.66)]
    [InlineData(5, 0.83)]
    [InlineData(50, 0.83)]
    public void Utilisation_is_that_of_the_table(double index, double factor)
        => Assert.Equal(factor, LumenMethod.Utilisation(index), 1e-9);

    /// <summary>
    /// A 20 ft box, worked out in the engineering reference (D7): K 1.210, 0.540, 4.01 lamps, so 5, which give 623 lx.
    /// </summary>
    [Fact]
    public void Lamps_of_a_container()
    {
        double area = 5.898 * 2.352;
        double index = LumenMethod.Index(area, 2 * (5.898 + 2.352), 1.39);
        double factor = LumenMethod.Utilisation(index);

        Assert.Equal(1.210, index, 0.0005);
        Assert.Equal(0.540, factor, 0.0005);
        Assert.Equal(4.01, LumenMethod.Lamps(500, area, 4000, factor, 0.8), 0.005);
        Assert.Equal(623, LumenMethod.Lux(5, area, 4000, factor, 0.8), 1.0);
    }
}
