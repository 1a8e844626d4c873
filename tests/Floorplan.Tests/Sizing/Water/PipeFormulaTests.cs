using Floorplan.Language.Quantities;
using Floorplan.Sizing.Water.Pipes;
using Xunit;

namespace Floorplan.Tests.Sizing.Water;

/// <summary>Demand, friction and sizes of water pipes against published tables and worked examples.</summary>
public class PipeFormulaTests
{
    private const double Gpm = InchPound.CubicMetresPerGallon / 60;
    private const double Inch = 0.0254;
    private const double Foot = 0.3048;
    private const double Psi = InchPound.PascalsPerPoundPerSquareInch;

    /// <summary>IPC 2021 Appendix E Table E103.3(3), flush tanks: rows of the table.</summary>
    [Theory]
    [InlineData(1, 3)]
    [InlineData(6, 10.7)]
    [InlineData(19, 19.2)]
    [InlineData(50, 29.1)]
    [InlineData(140, 52.5)]
    [InlineData(1000, 208)]
    [InlineData(5000, 593)]
    public void Demand_is_that_of_the_table(double units, double gpm) => Assert.Equal(gpm, FixtureDemand.Gpm(units), 9);

    /// <summary>Derived: a quarter of the way from 14 units (17 gpm) to 15 (17.5 gpm).</summary>
    [Fact]
    public void Demand_between_rows_lies_on_a_straight_line() => Assert.Equal(17.125, FixtureDemand.Gpm(14.25), 9);

    [Theory]
    [InlineData(0)]
    [InlineData(-3)]
    [InlineData(double.NaN)]
    public void No_units_draw_nothing(double units) => Assert.Equal(0, FixtureDemand.Gpm(units));

    /// <summary>engineeringtoolbox.com, Hazen-Williams: 200 gpm, 3.048 in, C 140, 30 ft: 2.7 ft of water.</summary>
    [Fact]
    public void Friction_of_a_worked_example_in_feet_of_water()
        => Assert.Equal(2.702, HazenWilliams.Head(30 * Foot, 200 * Gpm, 3.048 * Inch) / Foot, 0.005 * 2.702);

    /// <summary>8 gpm in 3/4 in type L (0.785 in), C 140: 7.39 psi in 100 ft, as a public copy prints the head form.</summary>
    [Fact]
    public void Friction_of_a_worked_example_in_psi()
        => Assert.Equal(7.391, HazenWilliams.Loss(100 * Foot, 8 * Gpm, 0.785 * Inch) / Psi, 0.005 * 7.391);

    /// <summary>
    /// Derived from IPC units and tube bores: three restaurant sinks, two public lavatories and a service sink are 19 units, 19.2 gpm:
    /// 3/4 in runs at 12.73 ft/s, 1 in at 7.465; of hot 17.125 gpm 1 in runs at 6.658, 1 1/4 in at 4.372.
    /// </summary>
    [Theory]
    [InlineData(19, TubeSize.FastestCold, "1 in", 7.465)]
    [InlineData(14.25, TubeSize.FastestHot, "1 1/4 in", 4.372)]
    public void The_smallest_tube_that_is_not_too_fast(double units, double fastest, string name, double feetPerSecond)
    {
        double flow = FixtureDemand.Gpm(units) * Gpm;
        var tube = TubeSize.Smallest(TubeSize.Of(UnitSystem.Feet), flow, fastest)!;
        Assert.Equal(name, tube.Name);
        Assert.Equal(feetPerSecond, HazenWilliams.Velocity(flow, tube.Bore) / Foot, 0.005 * feetPerSecond);
    }

    [Fact]
    public void No_tube_is_large_enough_for_a_river()
        => Assert.Null(TubeSize.Smallest(TubeSize.Of(UnitSystem.Metric), 1, TubeSize.FastestCold));
}
