using Floorplan.Sizing.Cost;
using Xunit;

namespace Floorplan.Tests.Sizing.Cost;

/// <summary>Worked examples of the engineering table: D11 (textbook formulas) and X18 (sugarengineers.co.za: 4.946).</summary>
public sealed class WorthTests
{
    [Fact]
    public void Money_spent_and_money_that_comes_every_year()
    {
        Assert.Equal(4.286, Worth.Payback(60_000, 14_000)!.Value, 0.001);
        Assert.Equal(6.7101, Worth.Annuity(0.08, 10), 0.0001);
        Assert.Equal(33_941, Worth.Present(60_000, 14_000, 0.08, 10), 1.0);
        Assert.Equal(5.455, Worth.PaybackWithInterest(60_000, 14_000, 0.08)!.Value, 0.001);
        Assert.Equal(1.697, Worth.Levelised(60_000, 25_000, 20_000, 0.08, 10), 0.001);
    }

    [Fact]
    public void Nine_years_at_14_percent() => Assert.Equal(4.946, Worth.Annuity(0.14, 9), 0.001);

    /// <summary>At the interest that makes the present value nothing (19.36 % in D11) it is back when the unit is worn out.</summary>
    [Fact]
    public void At_the_internal_rate_nothing_is_left()
    {
        Assert.Equal(0, Worth.Present(60_000, 14_000, 0.1936, 10), 10.0);
        Assert.Equal(10, Worth.PaybackWithInterest(60_000, 14_000, 0.1936)!.Value, 0.01);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1e9, 1e-9)]
    [InlineData(1, -5)]
    public void Nothing_that_comes_back_is_no_number_but_no_crash(double spent, double yearly)
    {
        Assert.True(Worth.Payback(spent, yearly) is null or >= 0);
        Assert.Null(Worth.PaybackWithInterest(1e9, yearly, 0.1));
    }

    /// <summary>By hand: 300 a day, 4 for one that costs 1.5: 120 pieces.</summary>
    [Fact]
    public void Break_even_pays_for_the_day()
    {
        Assert.Equal(120, Worth.BreakEven(300, 4, 1.5)!.Value, 1e-9);
        Assert.Null(Worth.BreakEven(300, 1.5, 1.5));
    }
}
