using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hands;

public sealed class ElbowRoomTests
{
    private const double FourteenFeet = 14 * 304.8;

    /// <summary>
    /// A 14 ft overhead evisceration line seats up to eight people (common practice, no source): four on each side, 3 1/2 ft each.
    /// </summary>
    [Fact]
    public void Eight_people_have_room_on_both_sides_of_a_line_of_14_ft()
        => Assert.Empty(Found("us", Line("workers 4 north\n  workers 4 south")));

    /// <summary>All on one side they have 1 3/4 ft, 533 mm, each; the forearms of a 95th-percentile man take 667 mm (ANSUR II).</summary>
    [Fact]
    public void Eight_on_one_side_do_not_and_it_is_said_once()
    {
        var finding = Assert.Single(Found("us", Line("workers 8 south")));

        Assert.Equal(FourteenFeet / 8, finding.Measured!.Value, 0.01);
        Assert.Equal(667, finding.LimitValue);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains("for 8 people on one side", finding.Mend);
    }

    [Theory]
    [InlineData(67, 0)]
    [InlineData(66, 1)]
    public void Neighbours_at_two_benches_count_too(int gap, int findings)
    {
        var found = Found("eu", $"""
            station left in cut
              size   600 x 600 x 900
              place  against north wall, 1000 from west
              worker south
            station right in cut
              size   600 x 600 x 900
              place  against north wall, east of left gap {gap}
              worker south
            """);

        Assert.Equal(findings, found.Count);
        Assert.All(found, f => Assert.Equal(["left", "right"], f.Things));
    }

    private static string Line(string workers) => $"""
        station line "Evisceration line" in cut
          size    14 ft x 2 ft x 900
          place   centred, 1 m from south
          {workers}
        """;

    private static IReadOnlyList<Finding> Found(string code, string more) => CheckedPlan.Check($"""
        plan "Line"
          units metric
          code {code}
        shell shed 7 m x 3 m x 2.8 m
        room cut "Eviscerating" clean from west to east
        door d1 cut to outside, west wall, 200 from south, 900 x 2050, swings out
        {more}
        """, "elbow-room");
}
