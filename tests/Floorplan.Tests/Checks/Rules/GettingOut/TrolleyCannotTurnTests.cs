using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.GettingOut;

public sealed class TrolleyCannotTurnTests
{
    private const string Rule = "trolley-cannot-turn";

    /// <summary>The ladder round a corner, a standard exercise of calculus: (a^(2/3) + b^(2/3))^(3/2); 8 and 27 give 13 sqrt 13.</summary>
    [Theory]
    [InlineData(8, 27)]
    [InlineData(1000, 1000)]
    [InlineData(900, 2400)]
    public void A_ladder_of_no_width_goes_round_as_the_textbook_says(double a, double b)
        => Assert.Equal(Math.Pow(Math.Pow(a, 2 / 3.0) + Math.Pow(b, 2 / 3.0), 1.5), CornerTurn.Longest(a, b, 0), 0.001 * (a + b));

    /// <summary>In equal passages the tightest angle is 45 degrees: length = 2 (a sqrt 2 - width).</summary>
    [Fact]
    public void A_rectangle_in_equal_passages_is_tightest_at_half_a_right_angle()
        => Assert.Equal(2 * ((1000 * Math.Sqrt(2)) - 600), CornerTurn.Longest(1000, 1000, 600), 0.01);

    [Fact]
    public void What_is_as_wide_as_the_passage_does_not_turn() => Assert.Equal(0, CornerTurn.Longest(600, 600, 900));

    /// <summary>
    /// Passages of 1000: 2 (1000 sqrt 2 - 620) = 1588 goes round, 10 mm free on either side of a trolley 600 wide. The search is kind
    /// by 16 mm on
    /// every side at most, which makes 1684.
    /// </summary>
    [Theory]
    [InlineData(1585, false)]
    [InlineData(1690, true)]
    public void A_trolley_turns_in_a_corner_that_its_length_goes_round(int length, bool found)
        => Assert.Equal(found, CheckedPlan.Check(Corner(1000, $"by trolley 600 wide {length} long"), Rule).Count == 1);

    [Fact]
    public void A_trolley_whose_length_is_not_said_is_a_usual_one_and_a_limit_sets_it()
    {
        Assert.Empty(CheckedPlan.Check(Corner(1000, "by trolley 600 wide"), Rule));
        Assert.Single(
            CheckedPlan.Check(Corner(1000, "by trolley 600 wide") + "limit trolley-cannot-turn 1690 mm \"our fish trolleys\"\n", Rule));
    }

    [Fact]
    public void Who_carries_by_hand_turns() => Assert.Empty(CheckedPlan.Check(Corner(1000, "by hand"), Rule));

    [Fact]
    public void An_accepted_corner_stays_on_the_list()
        => Assert.NotNull(
            Assert.Single(
                CheckedPlan.Check(Corner(1000, "by trolley 600 wide 2000 long")
                    + "accept trolley-cannot-turn \"two people lift it\"\n", Rule)).AcceptedBy);

    [Fact]
    public void Room_to_spin_beside_the_corner_is_room_to_turn()
        => Assert.Empty(CheckedPlan.Check(Corner(2000, "by trolley 600 wide 1700 long"), Rule));

    [Fact]
    public void The_finding_says_the_longest_that_goes_round_and_where()
    {
        var finding = Assert.Single(CheckedPlan.Check(Corner(1000, "by trolley 600 wide 2000 long"), Rule));

        Assert.InRange(finding.Measured!.Value, 1578, 1684);
        Assert.InRange(finding.At!.X, 6600, 7300);
        Assert.InRange(finding.At.Y, 400, 1100);
    }

    /// <summary>
    /// From a passage 1000 wide into another: 1800 long does not go round to the east, where 1588 does by the textbook. To the west
    /// lies a blind
    /// end 1500 wide, into which 2249 turns; from there it backs out to the east.
    /// </summary>
    [Theory]
    [InlineData(4000, true)]
    [InlineData(3500, false)]
    public void A_trolley_backs_out_of_a_side_passage(int westBlock, bool found)
    {
        Assert.Equal(2249, CornerTurn.Longest(1000, 1500, 620), 1.0);
        Assert.Equal(found, CheckedPlan.Check(Tee(westBlock), Rule).Count == 1);
    }

    [Fact]
    public void A_doorway_in_the_corner_is_floor_to_swing_into()
    {
        string corner = Corner(1000, "by trolley 600 wide 1690 long");

        Assert.Single(CheckedPlan.Check(corner, Rule));
        Assert.Empty(CheckedPlan.Check(corner + "door d3 pack to outside, east wall, 50 from south, 900 x 2100, swings out\n", Rule));
    }

    private static string Tee(int westBlock) => FormattableString.Invariant($"""
        plan "Side passage"
          units metric
        shell shed 8600 x 5200 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, south wall, 2450 from west, 900 x 2100, swings out
        door d2 pack to outside, east wall, 50 from north, 900 x 2100, swings out
        station east "Freezer block" in pack
          size 5000 x 4000 x 2000
          place against east wall, against south wall
        station west "Cold block" in pack
          size 2400 x {westBlock} x 2000
          place against west wall, against south wall
        flow product
          outside -> d1 -> d2 -> outside   by trolley 600 wide 1800 long

        """);

    private static string Corner(int passage, string by) => FormattableString.Invariant($"""
        plan "Round the corner"
          units metric
        shell shed 8000 x 4000 x 2600
        room pack "Packing" dry from west to east
        door d1 pack to outside, west wall, {(passage / 2) - 450} from south, 900 x 2100, swings out
        door d2 pack to outside, north wall, {(passage / 2) - 450} from east, 900 x 2100, swings out
        station block "Freezer block" in pack
          size {7800 - passage} x {3800 - passage} x 2000
          place against west wall, against north wall
        flow product
          outside -> d1 -> d2 -> outside   {by}

        """);
}
