using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;
using static System.FormattableString;

namespace Floorplan.Tests.Checks.Rules.WaterAndDrain;

public sealed class DrainTests
{
    /// <summary>9 CFR 416.2(e)(4) (from memory): a drain wherever floors are flooded to clean them.</summary>
    [Theory]
    [InlineData("washed down", 1)]
    [InlineData("kept dry", 0)]
    public void A_room_kept_dry_needs_no_drain(string how, int findings)
        => Assert.Equal(findings, CheckedPlan.Check($"{Wash(6000, 3000)}\n  {how}\n{Bench}", "room-without-drain").Count);

    [Fact]
    public void A_station_in_a_room_without_any_drain_cannot_be_drained()
    {
        var finding = Assert.Single(CheckedPlan.Check($"{Wash(6000, 3000)}\n{Bench}\n  needs drain", "drain-too-far"));

        Assert.Equal(Severity.Error, finding.Severity);
    }

    /// <summary>
    /// COMAR 10.15.03.21: a drain for each 400 sq ft, 37.16 m2. Two are enough for 70 m2, but with both at one end the second takes
    /// all that lies past the middle between them: (14 - 1.5) x 5 = 62.5 m2.
    /// </summary>
    [Fact]
    public void Drains_side_by_side_leave_the_rest_of_the_floor_to_one_of_them()
    {
        Assert.Empty(
            CheckedPlan.Check(Wash(14_000, 5000)
                + "\ndrain fd1 floor in wash, 3500 from west, centred, 100\ndrain fd2 floor in wash, 10500 from west, centred, 100",
                    "drain-too-few"));

        var finding =
            Assert.Single(
                CheckedPlan.Check(Wash(14_000, 5000)
                    + "\ndrain fd1 floor in wash, 1000 from west, centred, 100\ndrain fd2 floor in wash, 2000 from west, centred, 100",
                        "drain-too-few"));
        Assert.Contains("fd2", finding.Things);
        Assert.Equal(62.5, finding.Measured!.Value, 3);
    }

    /// <summary>COMAR 10.15.03.21: a drain for each 400 sq ft, 37.16 m2; so 75 m2 need three.</summary>
    [Theory]
    [InlineData(2, 1)]
    [InlineData(3, 0)]
    public void A_started_400_square_feet_needs_its_drain(int drains, int findings)
    {
        string points =
            string.Concat(Enumerable.Range(0, drains)
                .Select(i => Invariant($"\ndrain fd{i} floor in wash, {(i + 0.5) * 15_000 / drains:0} from west, centred, 100")));

        Assert.Equal(findings, CheckedPlan.Check(Wash(15_000, 5000) + points, "drain-too-few").Count);
    }

    /// <summary>
    /// Usual slopes over 2.5 m: 1/8 in/ft (COMAR) 26.0 mm, 1:60 (South Africa) 41.7 mm, 1/4 in/ft (CURFFL 114150) 52.1 mm.
    /// </summary>
    [Theory]
    [InlineData("1.0417 %", 26, false)]
    [InlineData("1.0417 %", 25, true)]
    [InlineData("1.6667 %", 42, false)]
    [InlineData("1.6667 %", 41, true)]
    [InlineData("2.0833 %", 52, false)]
    [InlineData("2.0833 %", 51, true)]
    public void A_fall_takes_slope_times_run_of_build_up(string slope, int floor, bool found)
    {
        // A drain in the middle of a floor of 4 m by 3 m lies 2.5 m from its corners.
        string plan = Wash(4000, 3000, Invariant($"lining walls 0, ceiling 0, floor {floor}"))
            + $"\ndrain fd1 floor in wash, 2000 from west, centred, 100\nfalls wash {slope} to fd1";

        Assert.Equal(found ? 1 : 0, CheckedPlan.Check(plan, "fall-not-possible").Count);
    }

    private const string Bench = """
        station bench "Rinse bench" in wash
          size  1400 x 600 x 900
          place against north wall, centred
        """;

    private static string Wash(int length, int depth, string lining = "") => $"""
        plan "Wash"
          units metric
          country us-md
        shell shed {length + 200} x {depth + 200} x 2800
          {lining}
        door d1 wash to outside, south wall, 200 from west, 900 x 2050, swings out
        room wash "Wash" dirty from west to east
        """;
}
