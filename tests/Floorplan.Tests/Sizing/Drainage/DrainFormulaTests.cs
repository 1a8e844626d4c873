using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Sizing.Drainage.Lines;
using Xunit;

namespace Floorplan.Tests.Sizing.Drainage;

/// <summary>Drain pipes and interceptors against tables and worked examples.</summary>
public class DrainFormulaTests
{
    private const double Gpm = InchPound.CubicMetresPerGallon / 60;
    private const double Inch = 0.0254;
    private const double CubicInch = Inch * Inch * Inch;

    /// <summary>engineeringprep.com problem 472: 0.5 ft, slope 5 %, n 0.02: 0.82 cu ft/s (0.8155 recomputed).</summary>
    [Fact]
    public void Manning_of_a_worked_example()
        => Assert.Equal(0.8155, Manning.Full(0.5 * 0.3048, 0.05, 0.02) / InchPound.CubicMetresPerCubicFoot, 0.005 * 0.8155);

    /// <summary>Derived, n 0.013: full pipes of 2, 3, 4 and 6 in at 1/4 and 1/8 in a foot, gpm.</summary>
    [Theory]
    [InlineData(2, 0.25, 19.4)]
    [InlineData(3, 0.25, 57.2)]
    [InlineData(4, 0.25, 123.3)]
    [InlineData(6, 0.25, 363.5)]
    [InlineData(3, 0.125, 40.5)]
    [InlineData(4, 0.125, 87.2)]
    [InlineData(6, 0.125, 257.0)]
    public void Full_pipes(double inches, double inchPerFoot, double gpm)
        => Assert.Equal(gpm, Manning.Full(inches * Inch, inchPerFoot / 12) / Gpm, 0.005 * gpm);

    /// <summary>Common practice: a pipe cleans itself from 2 ft/s on; 2 in at 1/4 in a foot just does not (1.983 ft/s, n 0.013).</summary>
    [Fact]
    public void Velocity_of_a_full_pipe()
        => Assert.Equal(1.983, Manning.Velocity(2 * Inch, DrainLine.UsSlope) / 0.3048, 0.005 * 1.983);

    /// <summary>PDI G101 Appendix A1: a sink of 48 x 24 x 12 in lets out 44.88 gpm in a minute: 50; 22.44 in two: 25.</summary>
    [Theory]
    [InlineData(1, 44.88, 50)]
    [InlineData(2, 22.44, 25)]
    public void A_sink_of_pdi_g101(double minutes, double gpm, double size)
    {
        double found = GreaseInterceptor.Gpm(48 * 24 * 12 * CubicInch, minutes);
        Assert.Equal(gpm, found, 0.005 * gpm);
        Assert.Equal(size, GreaseInterceptor.Next(found));
    }

    /// <summary>NYC DEP, proper sizing, Table I (2 minutes): volumes at which a size is just enough, cubic inches.</summary>
    [Theory]
    [InlineData(4312, 7)]
    [InlineData(6160, 10)]
    [InlineData(9240, 15)]
    [InlineData(12320, 20)]
    [InlineData(15400, 25)]
    [InlineData(21560, 35)]
    [InlineData(30800, 50)]
    public void Boundary_volumes_of_another_authority(double cubicInches, double size)
    {
        Assert.Equal(size, GreaseInterceptor.Gpm(cubicInches * CubicInch, 2), 1e-9);
        Assert.Equal(size, GreaseInterceptor.Next(GreaseInterceptor.Gpm(cubicInches * CubicInch, 2)));
        Assert.NotEqual(size, GreaseInterceptor.Next(GreaseInterceptor.Gpm((cubicInches + 10) * CubicInch, 2)));
    }

    [Fact]
    public void Above_the_largest_interceptor_there_is_none() => Assert.Null(GreaseInterceptor.Next(51));

    /// <summary>IPC 2018 Table 710.1(1), 1/4 in a foot: 3 in takes 42 units, 43 need 4 in; 216 are the most of 4 in.</summary>
    [Theory]
    [InlineData(21, "2 in")]
    [InlineData(42, "3 in")]
    [InlineData(43, "4 in")]
    [InlineData(216, "4 in")]
    [InlineData(217, "5 in")]
    public void Building_drains_of_the_code(double units, string name)
        => Assert.Equal(name, DrainPipe.Of(CodeChoice.Us).First(p => p.Carries(CodeChoice.Us, units, 0, DrainLine.UsSlope)).Name);

    /// <summary>
    /// By hand: DN 100 (96 mm) at 2 %, n 0.013: 0.007238 m2 x 0.024^(2/3) x 0.02^0.5 / 0.013 = 6.55 L/s full. EN 12056-2 Table B.1
    /// (from memory) has 3.5 L/s half full, with a smoother pipe.
    /// </summary>
    [Fact]
    public void A_metric_pipe_is_filled_half()
    {
        var pipe = DrainPipe.Of(CodeChoice.Eu).Single(p => p.Name == "DN 100");
        Assert.Equal(0.00655, Manning.Full(pipe.Bore, DrainLine.MetricSlope), 0.00002);
        Assert.True(pipe.Carries(CodeChoice.Eu, 0, 0.0032, DrainLine.MetricSlope));
        Assert.False(pipe.Carries(CodeChoice.Eu, 0, 0.0035, DrainLine.MetricSlope));
    }
}
