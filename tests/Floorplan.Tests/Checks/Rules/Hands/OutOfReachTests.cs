using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hands;

/// <summary>What hands go up to. Shoulder of a 5th-percentile woman 1242 mm, thumb-tip reach 674 mm: ANSUR II.</summary>
public sealed class OutOfReachTests
{
    private const string Unit = """
        plan "Up the wall"
          units metric
        shell container 20 ft high-cube
        room cut "Cutting" clean from west to east
        door d1 cut to outside, south wall, 700 from west, 900 x 2050, swings out
        station bench "Trim bench" in cut
          size   1800 x 600 x 900
          place  against north wall, 2500 from west
          worker south
        water w1 cold in cut, north wall, 3400 from west, height 1700
        hose hz1 on w1, 8 m
        store rack "Rack" in cut
          size   1200 x 500 x 2000
          place  corner south-east
        """;

    private const string Carried = "\nflow product\n  bench -> rack by hand";

    /// <summary>600 across and 458 up are 755 mm; at 600 across one reaches 307 mm over the shoulder, 1549 mm up.</summary>
    [Fact]
    public void A_hose_high_on_the_wall_behind_a_bench_is_told_with_how_high_it_may_hang()
    {
        var finding = Assert.Single(CheckedPlan.Check(Unit, "out-of-reach"));

        Assert.Equal(
            (Severity.Note, "hose hz1 hangs 1700 mm high, 755 mm from the shoulder of who stands nearest"),
            (finding.Severity, finding.Message));
        Assert.Contains("no higher than 1549 mm", finding.Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("height 1700", "height 1540")] // within reach
    [InlineData(", height 1700", "")] // not said
    [InlineData("3400 from west", "1500 from west")] // beside the bench
    [InlineData("1800 x 600", "600 x 600")] // one stands beside the bench
    public void A_hose_is_let_be_where_hands_come_to_it_or_nothing_says_that_they_do_not(string from, string to)
        => Assert.Empty(Check(from, to));

    [Fact]
    public void A_tap_is_turned_by_hand_and_piped_water_is_not()
    {
        string tap = Unit.Replace("hose hz1 on w1, 8 m\n", "", StringComparison.Ordinal);

        Assert.Contains("water point w1", Assert.Single(CheckedPlan.Check(tap, "out-of-reach")).Message, StringComparison.Ordinal);
        Assert.Empty(
            CheckedPlan.Check(tap.Replace("worker south", "worker south\n  needs cold", StringComparison.Ordinal), "out-of-reach"));
    }

    [Fact]
    public void A_bench_that_is_too_deep_itself_is_told_once() =>
        Assert.Contains("far side", Assert.Single(Check("1800 x 600", "1800 x 750")).Message, StringComparison.Ordinal);

    /// <summary>1242 and 674 are 1916 mm.</summary>
    [Fact]
    public void The_top_of_a_rack_is_told_unless_the_plan_says_that_hands_go_lower()
    {
        string carried = Unit.Replace("height 1700", "height 1200", StringComparison.Ordinal) + Carried;

        var finding = Assert.Single(CheckedPlan.Check(carried, "out-of-reach"));

        Assert.Contains("Rack (rack) is 2000 mm high", finding.Message, StringComparison.Ordinal);
        Assert.Contains("no higher than 1916 mm, or say with `work height`", finding.Mend, StringComparison.Ordinal);
        Assert.Empty(
            CheckedPlan.Check(carried.Replace("500 x 2000", "500 x 2000\n  work height 1800", StringComparison.Ordinal), "out-of-reach"));
        Assert.Empty(CheckedPlan.Check(carried.Replace("by hand", "by trolley", StringComparison.Ordinal), "out-of-reach"));
    }

    /// <summary>A store without a height is drawn 1800 mm high. Over a tank 500 deep and 558 mm over the shoulder that is 749 mm.</summary>
    [Fact]
    public void A_rack_whose_height_is_not_said_is_looked_at_on_plan_only()
    {
        string behind = Unit.Replace("height 1700", "height 1200", StringComparison.Ordinal)
            .Replace(
                "corner south-east",
                "corner south-east\nstation tank \"Tank\" in cut\n  size   1200 x 500 x 850\n  place  against east wall, north of rack\n"
                + "station cabinet \"Cabinet\" in cut\n  size   1000 x 1000 x 1800\n  place  against south wall, west of rack",
                StringComparison.Ordinal) + Carried;

        Assert.Contains(
            "749 mm from the shoulder",
            Assert.Single(CheckedPlan.Check(behind.Replace("500 x 2000", "500 x 1800", StringComparison.Ordinal), "out-of-reach")).Message,
            StringComparison.Ordinal);
        Assert.Empty(CheckedPlan.Check(behind.Replace("500 x 2000", "500", StringComparison.Ordinal), "out-of-reach"));
    }

    private static IReadOnlyList<Finding> Check(string from, string to)
    {
        Assert.Contains(from, Unit, StringComparison.Ordinal);
        return CheckedPlan.Check(Unit.Replace(from, to, StringComparison.Ordinal), "out-of-reach");
    }
}
