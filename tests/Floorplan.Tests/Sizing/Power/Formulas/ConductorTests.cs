using Floorplan.Sizing.Power.Formulas;
using Floorplan.Sizing.Power.Tables;
using Xunit;

namespace Floorplan.Tests.Sizing.Power.Formulas;

public sealed class ConductorTests
{
    /// <summary>
    /// Published motor examples, NEC 430.22 and 430.52: 7 1/2 hp, 230 V three-phase, 22 A at 60 C (mikeholt.com 15136); 5 hp, 230 V
    /// single-phase, 28 A at 75 C (electricianmath.com); 1 hp, 115 V, 16 A (diychatroom). The last is worked out by hand: 2 hp, 230 V.
    /// </summary>
    [Theory]
    [InlineData(7.5, 230, 3, false, 27.5, "10 AWG", 60)]
    [InlineData(5, 230, 1, true, 35, "10 AWG", 70)]
    [InlineData(1, 115, 1, true, 20, "14 AWG", 40)]
    [InlineData(2, 230, 1, false, 15, "14 AWG", 30)]
    public void A_US_motor_gets_its_conductor_and_breaker(
        double horsepower, double volts, int phases, bool warm, double needed, string conductor, double breaker)
    {
        double full = UsMotorCurrents.Amperes(horsepower, volts, phases);

        Assert.Equal(needed, full * UsConductor.Continuous, 9);
        Assert.Equal(conductor, UsConductor.Smallest(full * UsConductor.Continuous, warm)!.Name);
        Assert.Equal(breaker, BreakerSizes.NextUp(BreakerSizes.Us, full * UsConductor.MotorBreaker));
    }

    /// <summary>NEC 240.4(D): 14 AWG carries 20 A warm, and yet its breaker is 15 A; not so for a motor, 240.4(G).</summary>
    [Theory]
    [InlineData(12, 15, false, "14 AWG")]
    [InlineData(16, 20, false, "12 AWG")]
    [InlineData(25, 30, false, "10 AWG")]
    [InlineData(15, 30, true, "14 AWG")]
    [InlineData(32, 35, false, "8 AWG")]
    [InlineData(90, 100, false, "1 AWG")] // 60 C terminals: 95 A of 2 AWG is short of the breaker
    [InlineData(120, 125, false, "1 AWG")] // 75 C terminals above 100 A
    [InlineData(102, 110, false, "1 AWG")] // 2 AWG carries 115 A warm, and yet a circuit of 100 A has more
    public void Small_conductors_have_small_breakers(double needed, double breaker, bool motor, string conductor)
        => Assert.Equal(conductor, UsConductor.For(needed, breaker, motor, 1)!.Name);

    /// <summary>40 C takes 12 % of the 75 C rating: 25 x 0.88 = 22 A of 12 AWG is still more than the 20 A of its terminals.</summary>
    [Fact]
    public void Warm_air_counts_on_the_rating_of_the_wire()
    {
        Assert.Equal(20, UsConductor.Carries(CopperAwg.All[1], false, UsFactors.OfAmbient(40)), 9);
        Assert.Equal(18.75, UsConductor.Carries(CopperAwg.All[1], false, UsFactors.OfAmbient(50)), 9);
        Assert.Null(UsConductor.For(10, 15, false, UsFactors.OfAmbient(200)));
        Assert.Null(UsConductor.For(900, null, false, 1));
    }

    /// <summary>
    /// scribd 608590163: 16 kW at 400 V and 35 C need 44.02 A by the table behind a 30 A fuse that can be rewired, 26.6 A behind 25 A.
    /// Third: a device of 32 A in factors 0.87 and 0.8, 46 A.
    /// </summary>
    [Fact]
    public void A_device_and_its_factors_say_what_the_table_must_carry()
    {
        Assert.Equal(23.09, LineCurrent.Amperes(16_000, 400, 3), 2);
        Assert.Equal(44.02, IecConductor.ByTable(30, IecFactors.OfAmbient(35), 0.725), 2);
        Assert.Equal(26.6, IecConductor.ByTable(25, IecFactors.OfAmbient(35)), 2);
        Assert.Equal(45.98, IecConductor.ByTable(32, 0.87, 0.8), 2);
        Assert.Equal(10, IecCable.All.First(c => c.Carries(IecMethod.C, 3) >= 44.02).SquareMillimetres);
        Assert.Equal(4, IecCable.All.First(c => c.Carries(IecMethod.C, 3) >= 26.6).SquareMillimetres);
    }

    /// <summary>
    /// Worked out by hand from the tables: 4.4 kW, 230 V, clipped, 40 C, three bunched: 16.4 A of 2.5 mm2 is short of 20 A.
    /// </summary>
    [Fact]
    public void A_heater_in_warm_air_beside_two_others()
    {
        double current = LineCurrent.Amperes(4400, 230, 1);
        double factor = IecFactors.OfAmbient(40) * IecFactors.OfGroup(3);
        double? device = BreakerSizes.NextUp(BreakerSizes.Iec, current);

        Assert.Equal(19.1, current, 1);
        Assert.Equal(20, device);
        Assert.Equal(16.4, IecConductor.Carries(IecCable.All[1], IecMethod.C, 1, factor), 1);
        var cable = IecConductor.Smallest(20, IecMethod.C, 1, factor)!;
        Assert.Equal(4, cable.SquareMillimetres);
        Assert.Equal(21.9, IecConductor.Carries(cable, IecMethod.C, 1, factor), 1);
        double lost = VoltageDrop.ByMillivolts(VoltageDrop.Millivolts(cable, 1), current, 25);
        Assert.Equal(5.26, lost, 2);
        Assert.Equal(2.29, 100 * lost / 230, 2);
    }

    /// <summary>NEC 240.6(A), secondary copies; IEC 60898-1 from memory.</summary>
    [Theory]
    [InlineData(55, 60.0, 63.0)]
    [InlineData(70, 70.0, 80.0)]
    [InlineData(15.01, 20.0, 16.0)]
    [InlineData(5, 15.0, 6.0)]
    [InlineData(126, 150.0, null)]
    [InlineData(601, null, null)]
    public void The_next_breaker_up(double amperes, double? us, double? iec)
    {
        Assert.Equal(us, BreakerSizes.NextUp(BreakerSizes.Us, amperes));
        Assert.Equal(iec, BreakerSizes.NextUp(BreakerSizes.Iec, amperes));
    }
}
