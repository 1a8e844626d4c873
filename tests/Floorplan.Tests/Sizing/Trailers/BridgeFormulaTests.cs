using Floorplan.Sizing.Trailers;
using Xunit;

namespace Floorplan.Tests.Sizing.Trailers;

/// <summary>23 CFR 658.17 and the bridge formula, FHWA; worked examples T-ex2 to T-ex4 of the utilities table.</summary>
public sealed class BridgeFormulaTests
{
    [Theory]
    [InlineData(48, 5, 78_000)]
    [InlineData(51, 5, 79_875)]
    [InlineData(20, 3, 51_000)]
    [InlineData(35, 4, 65_333)]
    public void The_published_rows_come_out(double feet, int axles, double pounds)
        => Assert.Equal(pounds, BridgeFormula.Pounds(feet, axles), 0.5);

    [Theory]
    [InlineData(0, 1, 20_000)]
    [InlineData(40, 2, 20_000)]
    [InlineData(48, 2, 34_000)]
    [InlineData(96, 3, 34_000)]
    public void Axles_close_together_count_as_one_or_as_a_tandem(double inches, int axles, double pounds)
        => Assert.Equal(pounds, BridgeFormula.Allowed(inches, axles), 1e-6);

    [Fact]
    public void Nothing_goes_above_80_000_lb() => Assert.Equal(80_000, BridgeFormula.Allowed(1200, 6), 1e-6);

    /// <summary>Directive 96/53/EC Annex I 3.1 to 3.3, from memory.</summary>
    [Theory]
    [InlineData(0, 1, 10_000)]
    [InlineData(914, 2, 11_000)]
    [InlineData(1310, 2, 18_000)]
    [InlineData(1828, 3, 21_000)]
    public void European_axles_are_by_their_spacing(double spread, int axles, double kilograms)
        => Assert.Equal(kilograms, RoadLimit.European(spread, axles), 1e-6);
}
