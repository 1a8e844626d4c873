using Floorplan.Sizing.Power.Tables;
using Xunit;

namespace Floorplan.Tests.Sizing.Power.Tables;

public sealed class FactorTests
{
    /// <summary>NEC 310.15, column of 75 C, and conductors in one pipe; secondary copy.</summary>
    [Fact]
    public void US_factors_are_those_of_the_code()
    {
        Assert.Equal([1, 0.94, 0.88, 0.82, 0.75], new[] { 30, 31, 40, 45, 46.5 }.Select(UsFactors.OfAmbient));
        Assert.Equal([1, 0.8, 0.8, 0.7, 0.7], new[] { 3, 4, 6, 7, 9 }.Select(UsFactors.OfGroup));
    }

    /// <summary>BS 7671 Tables 4B1 and 4C1, bunched; secondary copies.</summary>
    [Fact]
    public void Metric_factors_are_those_of_the_tables()
    {
        Assert.Equal([1, 0.94, 0.87, 0.79, 0.71, 0.61], new double[] { 30, 35, 40, 45, 50, 55 }.Select(IecFactors.OfAmbient));
        Assert.Equal([1, 0.8, 0.7, 0.65, 0.6, 0.57, 0.5, 0.38], new[] { 1, 2, 3, 4, 5, 6, 9, 20 }.Select(IecFactors.OfGroup));
    }

    [Fact]
    public void Cool_air_gives_no_credit_and_too_hot_air_leaves_nothing()
    {
        Assert.Equal(1, UsFactors.OfAmbient(-40));
        Assert.Equal(1, IecFactors.OfAmbient(10));
        Assert.Equal(0, UsFactors.OfAmbient(200));
        Assert.Equal(0, IecFactors.OfAmbient(61));
        Assert.Equal(IecFactors.OfGroup(20), IecFactors.OfGroup(5000));
    }

    /// <summary>Larger is never less; of the whole tables.</summary>
    [Fact]
    public void A_larger_conductor_carries_more_and_loses_less()
    {
        Assert.All(CopperAwg.All.Zip(CopperAwg.All.Skip(1)), p =>
        {
            Assert.True(p.First.At60 < p.Second.At60 && p.First.At75 < p.Second.At75);
            Assert.True(p.First.OhmsPerThousandFeet > p.Second.OhmsPerThousandFeet);
        });
        Assert.All(IecCable.All.Zip(IecCable.All.Skip(1)), p =>
        {
            foreach (var method in Enum.GetValues<IecMethod>())
            {
                Assert.True(p.First.Carries(method, 1) < p.Second.Carries(method, 1));
                Assert.True(p.First.Carries(method, 3) < p.Second.Carries(method, 3));
            }
        });
    }
}
