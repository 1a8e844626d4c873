using Floorplan.Sizing.Lifting;
using Xunit;

namespace Floorplan.Tests.Checks.Lifting;

/// <summary>Several lifts in one job: Applications Manual, DHHS (NIOSH) 94-110, section 2.4.5.</summary>
public sealed class CompositeIndexTests
{
    /// <summary>
    /// The manual's example, inputs from memory: loads of 30, 20 and 10 lb, 1, 2 and 4 a minute for up to an hour, whose limits are 20, 20
    /// and 15 lb were they lifted seldom; printed 1.6 + 1.0 (1/0.88 - 1/0.94) + 0.67 (1/0.70 - 1/0.88) = 1.9. The limits come
    /// about here by reaching out and turning.
    /// </summary>
    [Fact]
    public void It_gives_what_the_manual_prints()
    {
        Lift[] lifts = [Seldom(30, 20, 1), Seldom(20, 20, 2), Seldom(10, 15, 4)];

        Assert.Equal([20.0, 20.0, 15.0], lifts.Select(l => Math.Round(LiftingEquation.RecommendedLb(l with { PerMinute = 0 }), 9)));
        Assert.Equal(1.9, CompositeIndex.Of(lifts), 0.05);
        Assert.Equal((30 / 20.0 / 0.94) + (1.0 * ((1 / 0.88) - (1 / 0.94)))
            + (10 / 15.0 * ((1 / 0.70) - (1 / 0.88))), CompositeIndex.Of(lifts), 1e-9);
    }

    [Fact]
    public void The_order_in_which_lifts_are_told_does_not_matter() =>
        Assert.Equal(CompositeIndex.Of([Seldom(30, 20, 1), Seldom(10, 15, 4)]), CompositeIndex.Of([Seldom(10, 15, 4), Seldom(30, 20, 1)]));

    [Fact]
    public void One_lift_alone_is_the_lift_itself()
        => Assert.Equal(LiftingEquation.Index(Seldom(30, 20, 3)), CompositeIndex.Of([Seldom(30, 20, 3)]), 1e-9);

    /// <summary>Table 5 ends at 15 a minute.</summary>
    [Fact]
    public void Lifts_that_are_too_many_together_have_no_index()
        => Assert.Equal(double.PositiveInfinity, CompositeIndex.Of([Seldom(30, 20, 8), Seldom(20, 20, 8), Seldom(10, 15, 1)]));

    /// <summary>A lift at the best height, 24 in out, turned by as much as makes its limit so many pounds when done seldom.</summary>
    private static Lift Seldom(double load, double limit, double perMinute) =>
        new(load, 24, 30, 10, (1 - (limit / (51 * 10 / 24.0))) / 0.0032, perMinute, LiftingDuration.Short, Coupling.Good);
}
