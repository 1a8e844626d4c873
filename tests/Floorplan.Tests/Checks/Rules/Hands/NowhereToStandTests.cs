using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hands;

/// <summary>
/// A place is as wide as the forearms of a 95th-percentile man, 667 mm, and 450 mm deep (own assumption); his body takes 567 x
/// 320 mm of it (shoulder breadth and abdominal depth, ANSUR II). Cuts of about 1 mm are setting out.
/// </summary>
public sealed class NowhereToStandTests
{
    [Theory]
    [InlineData(450, null)]
    [InlineData(448, Severity.Warning)]
    [InlineData(320, Severity.Warning)]
    [InlineData(318, Severity.Error)]
    public void A_tank_behind_the_worker_leaves_a_place_too_little_or_none(int gap, Severity? weight)
    {
        var found = Found(Tank($"south of bench gap {gap}"));

        Assert.Equal(weight is { } w ? [w] : [], found.Select(f => f.Severity));
        Assert.All(found, f => Assert.Equal(["bench", "tank"], f.Things));
    }

    /// <summary>The worker stands at the middle of the bench, so a wall at its end is half its length away.</summary>
    [Theory]
    [InlineData(667, 0)]
    [InlineData(662, 1)]
    public void A_wall_beside_the_worker_takes_width(int length, int findings)
        => Assert.Equal(findings, Found("", $"{length} x 600 x 900", "corner north-west").Count);

    [Theory]
    [InlineData("on wheels", 850, 0)]
    [InlineData("", 300, 0)]
    [InlineData("", 310, 1)]
    [InlineData("hung, underside 1900", 200, 0)]
    [InlineData("hung, underside 1890", 200, 1)]
    public void What_rolls_away_is_stood_on_or_hangs_over_heads_takes_no_floor(string how, int height, int findings)
        => Assert.Equal(findings, Found(Tank("south of bench gap 100", height, how)).Count);

    [Theory]
    [InlineData(900, 0)]
    [InlineData(896, 1)]
    public void Two_people_back_to_back_take_a_place_each(int aisle, int findings)
        => Assert.Equal(findings, Found(Tank($"south of bench gap {aisle}", 850, "worker north")).Count);

    [Fact]
    public void It_can_be_accepted_and_is_still_listed()
    {
        var accepted =
            Assert.Single(Found(Tank("south of bench gap 300") + "\naccept nowhere-to-stand at bench and tank \"until the tank is sold\""));

        Assert.Equal("until the tank is sold", accepted.AcceptedBy!.Reason);
    }

    private static string Tank(string place, int height = 850, string more = "") => $"""
        station tank "Chill tank" in work
          size  1400 x 600 x {height}
          place in line with bench, {place}
          {more}
        """;

    private static IReadOnlyList<Finding> Found(
        string more, string size = "1400 x 600 x 900", string place = "against north wall, 1500 from west") => CheckedPlan.Check($"""
        plan "A tank behind the worker"
          units metric
        shell container 20 ft high-cube
        room work "Cutting room" clean from west to east
        door d1 work to outside, south wall, 4000 from west, 900 x 2050, swings out
        station bench "Trim bench" in work
          size   {size}
          place  {place}
          worker south
        {more}
        """, "nowhere-to-stand");
}
