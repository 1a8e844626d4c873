using Floorplan.Sizing.Power.Formulas;
using Floorplan.Sizing.Power.Tables;
using Xunit;

namespace Floorplan.Tests.Sizing.Power.Formulas;

public sealed class VoltageDropTests
{
    /// <summary>electrician2.com: 16 AWG of 4.99 ohm a thousand feet, 4 A, 100 ft: 4.0 V, 16.6 % of 24 V.</summary>
    [Fact]
    public void There_and_back_by_the_resistance_of_the_wire()
    {
        double lost = VoltageDrop.ByTable8(4.99, 4, 100, 1);
        Assert.Equal(3.992, lost, 3);
        Assert.Equal(16.63, 100 * lost / 24, 2);
    }

    /// <summary>
    /// 20 A over 100 ft of 12 AWG: 7.72 V by NEC chapter 9 Table 8, 7.90 V by circular mils (6530 of them) with K = 12.9; both worked
    /// out by hand.
    /// </summary>
    [Fact]
    public void Both_US_ways_agree_within_three_in_a_hundred()
    {
        Assert.Equal(7.72, VoltageDrop.ByTable8(1.93, 20, 100, 1), 3);
        Assert.Equal(7.902, VoltageDrop.ByCircularMils(6530, 20, 100, 1), 3);
        Assert.Equal(Math.Sqrt(3) / 2, VoltageDrop.ByTable8(1.93, 20, 100, 3) / VoltageDrop.ByTable8(1.93, 20, 100, 1), 9);
    }

    /// <summary>5 kW at 230 V over 40 m, of 8.91, 5.62 and 3.71 ohm/km: 15.5, 9.77 and 6.45 V; 6.7, 4.25 and 2.8 %.</summary>
    [Theory]
    [InlineData(8.91, 15.50, 6.7)]
    [InlineData(5.62, 9.77, 4.25)]
    [InlineData(3.71, 6.45, 2.80)]
    public void By_ohms_a_kilometre(double ohms, double volts, double percent)
    {
        double lost = VoltageDrop.ByResistance(ohms, LineCurrent.Amperes(5000, 230, 1), 40, 1);
        Assert.Equal(volts, lost, 2);
        Assert.Equal(percent, 100 * lost / 230, 0.05);
    }

    /// <summary>scribd 608590163: 16 kW at 400 V over 25 m: 2.19 V in 10 mm2 (3.8 mV), 5.48 V or 1.37 % in 4 mm2 (9.5 mV).</summary>
    [Theory]
    [InlineData(10, 2.19, 0.55)]
    [InlineData(4, 5.48, 1.37)]
    public void By_millivolts_of_three_phase_cables(double size, double volts, double percent)
    {
        var cable = IecCable.All.First(c => c.SquareMillimetres == size);
        double lost = VoltageDrop.ByMillivolts(VoltageDrop.Millivolts(cable, 3), LineCurrent.Amperes(16_000, 400, 3), 25);
        Assert.Equal(volts, lost, 2);
        Assert.Equal(percent, 100 * lost / 400, 2);
    }

    /// <summary>IEC 60364-5-52 Annex G: 18.0 mV for each A and m of 2.5 mm2, which is what the table says.</summary>
    [Fact]
    public void Annex_G_gives_what_the_table_says()
    {
        Assert.Equal(18.0, 1000 * VoltageDrop.ByAnnexG(2.5, 1, 1, 1, 1), 9);
        Assert.All(
            IecCable.All.Where(c => c.MillivoltsTwo is not null), c
                => Assert.InRange(1000 * VoltageDrop.ByAnnexG(c.SquareMillimetres, 1, 1, 1, 1) / c.MillivoltsTwo!.Value, 0.96, 1.04));
    }

    /// <summary>A phase shift of cos 0.8 loses 20 % less by resistance and a little by reactance: 2 x (0.0072 + 0.000048) V.</summary>
    [Fact]
    public void A_motor_counts_its_phase_shift()
        => Assert.Equal(14.496, 1000 * VoltageDrop.ByAnnexG(2.5, 1, 1, 1, 0.8), 3);

    /// <summary>35 mm2 is above the table: sqrt 3 x 0.0225 / 35.</summary>
    [Fact]
    public void Above_the_table_the_formula_goes_on()
        => Assert.Equal(1.1135, VoltageDrop.Millivolts(IecCable.All.First(c => c.SquareMillimetres == 35), 3), 4);
}
