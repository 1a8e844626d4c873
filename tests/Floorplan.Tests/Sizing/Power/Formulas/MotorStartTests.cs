using Floorplan.Sizing.Power.Formulas;
using Xunit;

namespace Floorplan.Tests.Sizing.Power.Formulas;

public sealed class MotorStartTests
{
    /// <summary>
    /// csemag.com: 150 hp at 480 V starts with 5.3 kVA a hp, 795 kVA or 956 A, and runs at 135.13 kVA or 162.5 A: 5.9 times.
    /// </summary>
    [Fact]
    public void A_large_motor_of_a_published_example()
    {
        double start = LineCurrent.Amperes(150 * 5.3 * 1000, 480, 3);
        double running = LineCurrent.Amperes(150 * 745.7 / (0.91 * 0.91), 480, 3);
        Assert.Equal(956.2, start, 1);
        Assert.Equal(162.5, running, 1);
        Assert.InRange(start / running, 5.8, MotorStart.DirectOn);
    }

    /// <summary>5.5 kW straight on, 6 x 11.3 A at 400 V, reactance 0.15, worked out by hand: 47.0 kVA; 20 to 50 kVA dip so deep.</summary>
    [Theory]
    [InlineData(20, 26.1)]
    [InlineData(30, 19.0)]
    [InlineData(40, 15.0)]
    [InlineData(50, 12.4)]
    public void How_deep_a_generator_dips(double generator, double percent)
    {
        double start = LineCurrent.VoltAmperes(MotorStart.DirectOn * 11.3, 400, 3) / 1000;
        Assert.Equal(47.0, start, 1);
        Assert.Equal(percent, 100 * MotorStart.Dip(start, generator), 1);
    }

    /// <summary>The generator that is found dips exactly so deep.</summary>
    [Fact]
    public void The_smallest_generator_dips_as_deep_as_it_may()
        => Assert.Equal(MotorStart.DeepestDip, MotorStart.Dip(47, MotorStart.SmallestFor(47)), 9);
}
