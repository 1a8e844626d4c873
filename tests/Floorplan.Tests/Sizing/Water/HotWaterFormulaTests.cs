using Floorplan.Language.Quantities;
using Floorplan.Sizing.Water.Hot;
using Floorplan.Sizing.Water.Ice;
using Xunit;

namespace Floorplan.Tests.Sizing.Water;

/// <summary>Heat of water, open tanks and ice against worked examples.</summary>
public class HotWaterFormulaTests
{
    private const double Kwh = 3.6e6;
    private const double SquareFoot = InchPound.SquareMetresPerSquareFoot;

    /// <summary>Derived from 4186 J/(kg K): 50 gal from 50 to 145 °F are 11.61 kWh; 6 kW take 1.933 h.</summary>
    [Fact]
    public void A_scald_tank_from_cold()
    {
        double joules = WaterHeat.Energy(50 * InchPound.CubicMetresPerGallon, InchPound.Celsius(145) - InchPound.Celsius(50));
        Assert.Equal(11.61, joules / Kwh, 0.005 * 11.61);
        Assert.Equal(1.933, joules / 6000 / 3600, 0.005 * 1.933);
    }

    /// <summary>engineeringtoolbox.com, heat loss from open tanks: 150 °F, 10 sq ft of surface, 50 sq ft of bare wall: 19,400
    /// Btu/h.</summary>
    [Fact]
    public void An_open_tank_loses_what_the_worked_example_says()
    {
        double watts = (10 * SquareFoot * OpenTank.FromSurface(InchPound.Celsius(150)))
            + (50 * SquareFoot * OpenTank.FromWall(InchPound.Celsius(150)));
        Assert.Equal(19_400, watts / InchPound.WattsPerBtuPerHour, 1);
    }

    /// <summary>Derived from the same table: 4 sq ft at 145 °F lie half-way between 820 and 1040 Btu/h: 1,090 W.</summary>
    [Fact]
    public void Between_rows_an_open_tank_loses_on_a_straight_line()
        => Assert.Equal(1090, 4 * SquareFoot * OpenTank.FromSurface(InchPound.Celsius(145)), 0.005 * 1090);

    /// <summary>
    /// ASHRAE's equation for pools (from memory) gives 1.696 kW/m2 by vapour alone at 60 °C; the table has vapour and radiation.
    /// Its vapour part may differ by a quarter.
    /// </summary>
    [Fact]
    public void The_table_of_open_tanks_agrees_with_the_pool_equation()
        => Assert.InRange(OpenTank.FromSurface(60), 1696, 1696 * 1.25 * 1.25);

    [Fact]
    public void Water_that_is_no_warmer_than_the_room_loses_nothing() => Assert.Equal(0, OpenTank.FromSurface(10));

    /// <summary>FAO Fisheries Technical Paper 331: 1,000 kg of lean fish from 25 to 0 °C take 250 kg of ice (250.7 in SI).</summary>
    [Fact]
    public void Ice_for_a_tonne_of_fish() => Assert.Equal(250, IceNeed.Of(1000, IceNeed.LeanFish, 25), 0.005 * 250);

    /// <summary>Derived with 3.31 kJ/(kg K): a carcass of 1.8 kg from 38 to 4 °C takes 0.607 kg.</summary>
    [Fact]
    public void Ice_for_a_bird() => Assert.Equal(0.607, IceNeed.Of(1.8, IceNeed.Poultry, 34), 0.001);

    /// <summary>A heat balance by hand: 10 and 60 °C give 40 °C with three parts of five hot.</summary>
    [Fact]
    public void Mixed_water() => Assert.Equal(0.6, WaterHeat.HotShare(10, 60, 40), 9);
}
