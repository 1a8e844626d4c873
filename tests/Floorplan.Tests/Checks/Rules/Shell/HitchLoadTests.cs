using Floorplan.Checks.Findings;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Shell;

public sealed class HitchLoadTests
{
    /// <summary>
    /// The worked example of Trailer-Body Builders (tongue weight calculator): axles 100 in behind the hitch, a load of 1700 lb
    /// 88 in behind it, an empty trailer of 800 lb with 80 lb on its tongue, so its weight lies at 90 in: 284 lb. The example
    /// prints 11.86 %; 284 of 2500 is 11.4 %.
    /// </summary>
    [Theory]
    [InlineData("west", "22 in from west")]
    [InlineData("east", "22 in from east")]
    public void The_worked_example_of_the_trailer_builders_comes_out(string hitch, string place)
    {
        var finding = Assert.Single(Found(hitch, place, "1700 lb", "limit hitch-load 20 % \"a gooseneck\""));

        Assert.Contains("284 lb of 2500 lb, 11.4 %", finding.Message);
        Assert.Empty(Found(hitch, place, "1700 lb", ""));
    }

    [Fact]
    public void A_tank_that_balances_when_full_is_weighed_empty_too()
    {
        var finding = Assert.Single(Found("west", "22 in from west", "10 lb empty, 1700 lb full", "limit hitch-load 11 % \"this hitch\""));

        Assert.Contains("with everything empty", finding.Message);
    }

    [Fact]
    public void Weight_behind_the_axles_lifts_the_hitch()
        => Assert.Contains("lifts its hitch", Assert.Single(Found("west", "0 in from east", "1700 lb", "")).Message);

    /// <summary>
    /// The share by country: towing practice in the US 10 to 15 %; Regulation (EU) 1230/2012 at least 4 %, and the plate for the most. By
    /// moments the tank of 1700 lb at 95 in gives (80 + 1700 x 5 / 100) / 2500 = 6.6 %, and at 111 in it lifts the hitch.
    /// </summary>
    [Theory]
    [InlineData("us", 29, 1)]
    [InlineData("none", 29, 0)]
    [InlineData("none", 45, 1)]
    [InlineData("eu", 29, 0)]
    [InlineData("eu", 45, 1)]
    public void The_least_share_is_that_of_the_code(string code, int from, int found)
        => Assert.Equal(found, Found("west", $"{from} in from west", "1700 lb", "", code).Count);

    /// <summary>284 lb on the hitch by the worked example, and a plate that allows less or more.</summary>
    [Theory]
    [InlineData("eu", 280, 1)]
    [InlineData("us", 280, 1)]
    [InlineData("eu", 290, 0)]
    public void The_plate_of_the_coupling_holds_everywhere(string code, int rated, int found)
    {
        var findings = Found("west", "22 in from west", "1700 lb", "", code, $", {rated} lb rated");

        Assert.Equal(found, findings.Count);
        Assert.All(findings, f => Assert.Contains($"rated {rated} lb", f.Limit));
    }

    /// <summary>A box of 120 in whose coupling lies 30 in before it; walls of 1 in; a tank of 70 in.</summary>
    private static IReadOnlyList<Finding> Found(
        string hitch, string place, string weight, string more, string code = "none", string rated = "") => CheckedPlan.Check($"""
        plan "Trailer"
          units feet
          code {code}
        shell trailer 120 in x 80 in x 90 in
          walls  1 in
          hitch  {hitch}, 30 in ahead{rated}
          axles  2, 100 in from hitch
          weight 800 lb empty
        room work "Work room" dry from west to east
        door d1 work to outside, south wall, 12 in from west, 30 in x 78 in, swings out
          frame none
        station tank "Tank" in work
          size   70 in x 30 in x 40 in
          place  against north wall, {place}
          weight {weight}
        {more}
        """, "hitch-load");
}
