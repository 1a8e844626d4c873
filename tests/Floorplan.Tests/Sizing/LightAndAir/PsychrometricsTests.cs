using Floorplan.Sizing.LightAndAir;
using Xunit;

namespace Floorplan.Tests.Sizing.LightAndAir;

public sealed class PsychrometricsTests
{
    /// <summary>ASHRAE Fundamentals 2017, chapter 1, table 3, in Pa; within 300 ppm.</summary>
    [Theory]
    [InlineData(-20, 103.24)]
    [InlineData(-5, 401.74)]
    [InlineData(5, 872.6)]
    [InlineData(25, 3169.7)]
    [InlineData(50, 12351.3)]
    [InlineData(100, 101418)]
    public void Vapour_pressure_is_that_of_the_table(double celsius, double pascals)
        => Assert.Equal(pascals, Psychrometrics.Saturation(celsius), pascals * 300e-6);

    /// <summary>ASHRAE Fundamentals 2017, chapter 1, example 1, read off a chart: 40 C dry, 20 C wet at 101.325 kPa.</summary>
    [Fact]
    public void A_wet_thermometer_tells_what_is_in_the_air()
    {
        double water = Psychrometrics.WaterOfWetBulb(40, 20);

        Assert.Equal(0.0065, water, 0.0002);
        Assert.Equal(7, Psychrometrics.DewPointOfWater(water), 0.5);
        Assert.Equal(0.14, Psychrometrics.Humidity(40, water), 0.002);
        Assert.Equal(56.7, Psychrometrics.Heat(40, water), 0.1);
        Assert.Equal(0.896, Psychrometrics.Volume(40, water), 0.001);
    }

    /// <summary>Standard pressures, ASHRAE Fundamentals 2017, chapter 1, table 1.</summary>
    [Theory]
    [InlineData(0, 101_325)]
    [InlineData(500, 95_461)]
    [InlineData(1000, 89_875)]
    public void Air_is_thinner_higher_up(double metres, double pascals) => Assert.Equal(pascals, Psychrometrics.Pressure(metres), 5.0);

    /// <summary>From the ASHRAE equations at 101.325 kPa, worked out apart from this program: utilities reference, V8.</summary>
    [Theory]
    [InlineData(20, 0.5, 9.27, 7.26, 38.55, 0.8402)]
    [InlineData(25, 0.5, 13.86, 9.88, 50.32, 0.8580)]
    [InlineData(30, 0.5, 18.45, 13.31, 64.21, 0.8772)]
    [InlineData(2, 0.9, 0.53, 3.92, 11.84, 0.7844)]
    public void Damp_air_has_its_dew_point_water_heat_and_volume(
        double celsius, double humidity, double dewPoint, double grams, double heat, double volume)
    {
        double water = Psychrometrics.Water(celsius, humidity);

        Assert.Equal(dewPoint, Psychrometrics.DewPoint(celsius, humidity), 0.05);
        Assert.Equal(grams, 1000 * water, 0.01);
        Assert.Equal(heat, Psychrometrics.Heat(celsius, water), 0.02);
        Assert.Equal(volume, Psychrometrics.Volume(celsius, water), 0.0001);
    }

    /// <summary>The same, without its volume.</summary>
    [Theory]
    [InlineData(35, 0.4, 19.38, 14.13, 71.47)]
    [InlineData(10, 0.8, 6.71, 6.09, 25.40)]
    public void Damp_air_has_its_dew_point_water_and_heat(double celsius, double humidity, double dewPoint, double grams, double heat)
    {
        double water = Psychrometrics.Water(celsius, humidity);

        Assert.Equal(dewPoint, Psychrometrics.DewPoint(celsius, humidity), 0.05);
        Assert.Equal(grams, 1000 * water, 0.01);
        Assert.Equal(heat, Psychrometrics.Heat(celsius, water), 0.02);
    }

    /// <summary>Penn State, lecture on humidity: 25 C, 100 kPa, 75 %; its water of 0.0152 comes from a rounded pressure.</summary>
    [Fact]
    public void At_another_pressure_the_same_air_holds_more()
        => Assert.Equal(0.0152, Psychrometrics.Water(25, 0.75, 100_000), 0.0001);

    /// <summary>A ventilation page (1nergie.lu): 21 C and 55 % have their dew point at 11.6 C.</summary>
    [Fact]
    public void The_dew_point_of_a_living_room() => Assert.Equal(11.6, Psychrometrics.DewPoint(21, 0.55), 0.05);

    [Theory]
    [InlineData(double.MaxValue, 1)]
    [InlineData(double.MinValue, 0)]
    [InlineData(99.99, 5)]
    public void Nonsense_gives_a_number(double celsius, double humidity)
    {
        Assert.True(double.IsFinite(Psychrometrics.Water(celsius, humidity)));
        Assert.True(double.IsFinite(Psychrometrics.DewPoint(celsius, humidity)));
    }
}
