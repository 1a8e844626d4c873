using Floorplan.Sizing.Power.Formulas;
using Xunit;

namespace Floorplan.Tests.Sizing.Power.Formulas;

public sealed class DemandTests
{
    /// <summary>NEC 220.56, worked out by hand: six loads, 26 kW x 0.65 = 16.9 kW, more than the two largest.</summary>
    [Fact]
    public void Six_machines_of_a_kitchen() => Assert.Equal(16.9, KitchenDemand.Of([9, 6, 4.5, 3, 2, 1.5]), 9);

    /// <summary>NEC 220.56: never less than the two largest together.</summary>
    [Fact]
    public void Two_large_machines_among_small_ones() => Assert.Equal(20, KitchenDemand.Of([10, 0.1, 10, 0.1, 0.1, 0.1]), 9);

    /// <summary>NEC 220.56: 100 % to two, 65 % from six on; those between are from memory.</summary>
    [Fact]
    public void The_share_by_number()
        => Assert.Equal([1, 1, 1, 0.9, 0.8, 0.7, 0.65, 0.65], Enumerable.Range(0, 8).Select(KitchenDemand.Factor));

    /// <summary>Electrician's Guide Table 6.2, small shop.</summary>
    [Fact]
    public void Diversity_of_a_small_shop()
    {
        Assert.Equal(10 + (0.8 * 5) + (0.6 * (4 + 2)), Diversity.Machines([2, 10, 5, 4]), 9);
        Assert.Equal(8 + 6 + (0.25 * 4), Diversity.InstantHeaters([4, 6, 8]), 9);
        Assert.Equal(16 + (0.75 * 23), Diversity.Sockets([10, 16, 13]), 9);
        Assert.Equal(0, Diversity.Machines([]));
    }
}
