using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Sizing.Carrying;

public sealed class WaysTests
{
    /// <summary>
    /// Nobody sets a load down in a doorway: two legs of some 5 m are one carry of more than 10 m (LM-MMH equations, Potvin and others,
    /// 2021: fitted up to 10 m). Leg by leg nothing was found.
    /// </summary>
    [Fact]
    public void A_carry_through_a_door_is_one_carry()
    {
        string through = Box("wash -> d2 -> pack by hand");
        var ways = CheckedPlan.Facts(CheckedPlan.Plan(through)).Ways;

        var carry = Assert.Single(ways.Carries);
        Assert.Equal(2, carry.Legs.Count);
        Assert.All(carry.Legs, l => Assert.InRange(ways.ByLeg[l].Value, 1, 9_999));
        Assert.Equal(carry.Legs.Sum(l => ways.ByLeg[l].Value), carry.Length.Value, 1e-6);
        var finding = Assert.Single(CheckedPlan.Check(through, "hand-carry-too-far"));
        Assert.Equal(carry.Length.Value, finding.Measured!.Value, 1e-6);
        Assert.Equal(["wash", "pack"], finding.Things);
    }

    [Fact]
    public void A_carry_of_one_leg_is_that_legs_own_figure()
    {
        var ways = CheckedPlan.Facts(CheckedPlan.Plan(Box("wash -> pack by hand"))).Ways;

        var carry = Assert.Single(ways.Carries);
        Assert.Same(ways.ByLeg[carry.Legs[0]], carry.Length);
    }

    [Theory]
    [InlineData("wash -> d2 -> pack by trolley 600 wide", 0)]
    [InlineData("wash -> table -> pack by hand", 2)]
    public void What_is_wheeled_or_set_down_is_another_way(string flow, int carries) =>
        Assert.Equal(carries, CheckedPlan.Facts(CheckedPlan.Plan(Box(flow))).Ways.Carries.Count);

    /// <summary>Less than a touch of 1 mm is a cross on the sheet and in the rule: the sheet had `0.0 m` there.</summary>
    [Fact]
    public void Each_meeting_has_one_figure()
    {
        var facts = CheckedPlan.Facts(CheckedPlan.Plan(Box("wash -> pack by hand\nflow waste\n  pack -> wash by trolley 600 wide")));

        Assert.NotEmpty(facts.Space.Meetings);
        Assert.All(facts.Space.Meetings, m => Assert.Equal(m.SharedMm, facts.Ways.Shared[m].Value));
        Assert.All(facts.Ways.Shared.Values, f => Assert.Equal(f.Value <= 1, f.Text == "cross"));
    }

    private static string Box(string flow) => $"""
        plan "A long carry through a door"
          units metric
          code none
        shell container 40 ft high-cube
          lining walls 60, ceiling 60, floor 40
          doors  west
        room wet "Wet room" dirty from west to 5800
        room dry "Dry room" clean from 5800 to east
        door d1 wet to outside, south wall, 2500 from west, 900 x 2050, swings out, closes itself
        door d2 wet to dry, centred, 900 x 2050, swings dry
        station wash "Wash table" in wet
          size   1200 x 600 x 900
          place  against north wall, 100 from west
          worker south
        station table "Table" in dry
          size   1200 x 600 x 900
          place  against north wall, 500 from west
          worker south
        station pack "Packing table" in dry
          size   1200 x 600 x 900
          place  against north wall, 100 from east
          worker south
        flow product
          {flow}
        """;
}
