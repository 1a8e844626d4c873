using Floorplan.Sizing.Ground;
using Xunit;

namespace Floorplan.Tests.Sizing.Ground;

public sealed class WindTests
{
    /// <summary>S2 of the engineering table, by EN 1991-1-4 4.3 to 4.5: exposure at 2.591 m in terrain 0 to IV.</summary>
    [Theory]
    [InlineData(0.003, 1, 2.27)]
    [InlineData(0.01, 1, 2.01)]
    [InlineData(0.05, 2, 1.56)]
    [InlineData(0.3, 5, 1.28)]
    [InlineData(1, 10, 1.18)]
    public void European_exposure_at_the_top_of_a_box(double rough, double least, double exposure)
        => Assert.Equal(exposure, EuropeanWind.Exposure(rough, least, 2.591), 0.01);

    /// <summary>X15 (infosteel, rounding: 659 Pa printed, 661.8 recomputed) and X16 (1.658 and 0.449 kPa).</summary>
    [Theory]
    [InlineData(26, 0.3, 5, 8, 661.8)]
    [InlineData(25, 0.003, 1, 77.36, 1657.5)]
    [InlineData(22, 0.3, 5, 7.02, 449.2)]
    public void European_pressure_of_the_worked_examples(double basic, double rough, double least, double height, double pascals)
        => Assert.Equal(pascals, EuropeanWind.Pressure(basic, EuropeanWind.Exposure(rough, least, height)), 0.1);

    /// <summary>S3: ASCE 7 exposure C has 0.85 up to 15 ft and 0.98 at 30 ft; 115 mph with direction 0.85 give 1170 Pa.</summary>
    [Fact]
    public void American_pressure_by_the_table()
    {
        Assert.Equal(0.85, AmericanWind.Exposure(2.6), 0.005);
        Assert.Equal(0.98, AmericanWind.Exposure(9.144), 0.005);
        Assert.Equal(1170, AmericanWind.Pressure(115 * 0.44704, AmericanWind.Exposure(2.6)), 5.0);
    }

    /// <summary>
    /// D8: wind of 24 m/s in terrain II, 1.3 on the long side. A 20 ft box of 2300 kg and a 40 ft high-cube of 3900 kg, 2.438 m wide.
    /// </summary>
    [Theory]
    [InlineData(2300, 6.058, 2.591, 561.7, 11_460, 1.85, 0.508, 32.7)]
    [InlineData(3900, 12.192, 2.896, 583.4, 26_780, 1.20, 0.700, 26.3)]
    public void Empty_boxes_of_the_worked_example(
        double kilograms, double length, double height, double pascals, double newtons, double ratio, double friction, double falls)
    {
        double pressure = EuropeanWind.Pressure(24, EuropeanWind.Exposure(0.05, 2, height));
        double push = pressure * 1.3 * length * height;
        double overturning = SetDownBox.Overturning(kilograms, 1.219, push, height);

        Assert.Equal(pascals, pressure, 0.1);
        Assert.Equal(newtons, push, 10.0);
        Assert.Equal(ratio, overturning, 0.005);
        Assert.Equal(friction, SetDownBox.Friction(kilograms, push), 0.001);
        Assert.Equal(falls, 24 * Math.Sqrt(overturning), 0.1);
    }

    /// <summary>With its tie-downs the box stands exactly as well as was asked: moments about the lee edge once more.</summary>
    [Theory]
    [InlineData(2300, 11_460, 2.591, 2.5)]
    [InlineData(3900, 26_780, 2.896, 1.5)]
    public void Tie_downs_bring_what_is_asked(double kilograms, double push, double height, double ratio)
    {
        double down = SetDownBox.HoldDown(kilograms, 1.219, push, height, 2.438, ratio);
        double still = SetDownBox.HoldStill(kilograms, push, 0.25, ratio);

        Assert.True(down > 0);
        Assert.Equal(ratio, ((kilograms * 9.80665 * 1.219) + (down * 2.438)) / (push * height / 2), 1e-9);
        Assert.Equal(ratio, ((0.25 * kilograms * 9.80665) + still) / push, 1e-9);
    }
}
