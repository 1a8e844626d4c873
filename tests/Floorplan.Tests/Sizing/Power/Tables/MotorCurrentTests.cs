using Floorplan.Sizing.Power.Formulas;
using Floorplan.Sizing.Power.Tables;
using Xunit;

namespace Floorplan.Tests.Sizing.Power.Tables;

public sealed class MotorCurrentTests
{
    /// <summary>NEC Tables 430.248 and 430.250 (2008), in secondary copies.</summary>
    [Theory]
    [InlineData(1 / 6.0, 115, 1, 4.4)]
    [InlineData(0.5, 208, 1, 5.4)]
    [InlineData(1, 115, 1, 16)]
    [InlineData(1.5, 230, 1, 10)]
    [InlineData(2, 200, 1, 13.8)]
    [InlineData(5, 230, 1, 28)]
    [InlineData(10, 230, 1, 50)]
    [InlineData(0.5, 230, 3, 2.2)]
    [InlineData(3, 208, 3, 10.6)]
    [InlineData(7.5, 230, 3, 22)]
    [InlineData(15, 208, 3, 46.2)]
    public void US_motors_draw_what_the_tables_say(double horsepower, double volts, int phases, double amperes)
        => Assert.Equal(amperes, UsMotorCurrents.Amperes(horsepower, volts, phases), 9);

    /// <summary>110, 120 and 127 V, 220 and 240 V are the same supplies under other names.</summary>
    [Theory]
    [InlineData(1, 120, 16)]
    [InlineData(1, 110, 16)]
    [InlineData(1, 240, 8)]
    [InlineData(1, 220, 8)]
    public void A_supply_by_another_name_is_the_same_column(double horsepower, double volts, double amperes)
        => Assert.Equal(amperes, UsMotorCurrents.Amperes(horsepower, volts, 1), 9);

    /// <summary>NEC Table 430.250 has half the current at 460 V, from memory: 4.8 A for 3 hp.</summary>
    [Fact]
    public void At_twice_the_voltage_it_draws_half()
        => Assert.Equal(4.8, UsMotorCurrents.Amperes(3, 460, 3), 9);

    [Theory]
    [InlineData(1.2, 10)] // the next larger of the table, 1.5 hp
    [InlineData(1.502, 10)] // 1.12 kW
    [InlineData(20, 100)] // twice 10 hp
    [InlineData(0, 0)]
    public void Between_and_beyond_the_rows(double horsepower, double amperes)
        => Assert.Equal(amperes, UsMotorCurrents.Amperes(horsepower, 230, 1), 9);

    /// <summary>Appendix of a maker of drives, two copies that agree: 400 V and 230 V.</summary>
    [Theory]
    [InlineData(0.37, 1.1, 2.0)]
    [InlineData(0.75, 1.9, 3.2)]
    [InlineData(1.1, 2.6, 4.6)]
    [InlineData(2.2, 5.0, 8.7)]
    [InlineData(5.5, 11.3, 19.6)]
    [InlineData(15, 29.3, 51)]
    public void Metric_motors_draw_what_the_table_says(double kilowatts, double at400, double at230)
    {
        Assert.Equal(at400, IecMotorCurrents.Amperes(kilowatts * 1000, 400), 9);
        Assert.Equal(at230, IecMotorCurrents.Amperes(kilowatts * 1000, 230), 9);
        Assert.Equal(at400, IecMotorCurrents.Amperes(kilowatts * 1000, 380), 9);
    }

    /// <summary>1.5 hp is 1.119 kW, which is sold as 1.1 kW.</summary>
    [Fact]
    public void A_horsepower_falls_into_its_metric_row() => Assert.Equal(2.6, IecMotorCurrents.Amperes(1.5 * 745.7, 400), 9);

    /// <summary>1.5 hp of shaft is 1.12 kW; the motor is 2.3 kVA of supply.</summary>
    [Fact]
    public void Shaft_power_is_not_what_the_supply_gives()
        => Assert.Equal(2300, LineCurrent.VoltAmperes(UsMotorCurrents.Amperes(1.5, 230, 1), 230, 1), 6);
}
