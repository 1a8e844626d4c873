using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class DoublesBackTests
{
    [Fact]
    public void A_line_in_the_shape_of_a_u_does_not_double_back() => Assert.Empty(Found("a -> c -> d -> e"));

    [Fact]
    public void A_line_in_order_does_not_double_back() => Assert.Empty(Found("a -> b -> c"));

    /// <summary>a at 1, b at 4, c at 8 m from the west: forward 7, back 4, forward 0 m; a third or so of the way.</summary>
    [Fact]
    public void A_step_back_is_measured_against_the_whole_way()
    {
        var finding = Assert.Single(Found("a -> c -> b"));

        Assert.Equal(["c", "b"], finding.Things);
        Assert.InRange(finding.Measured!.Value, 33, 40);
    }

    [Fact]
    public void A_plan_may_allow_more() => Assert.Empty(Found("a -> c -> b", "limit doubles-back 45 % \"one crew, small batches\""));

    private static IReadOnlyList<Finding> Found(string way, string more = "") => CheckedPlan.Check($"""
        plan "Apple room"
          units metric
        shell shed 10 m x 4 m x 2.5 m
        room wash "Wash and pack" clean from west to east
        door door wash to outside, west wall, 1500 from south, 900 x 2050, swings out
        station a in wash
          size 900 x 600 x 900
          place against north wall, 1000 from west
          worker south
        station b in wash
          size 900 x 600 x 900
          place against north wall, 4000 from west
          worker south
        station c in wash
          size 900 x 600 x 900
          place against north wall, 8000 from west
          worker south
        station d in wash
          size 900 x 600 x 900
          place against south wall, 8000 from west
          worker north
        station e in wash
          size 900 x 600 x 900
          place against south wall, 1000 from west
          worker north
        flow product
          {way}   by hand
        {more}
        """, "doubles-back");
}
