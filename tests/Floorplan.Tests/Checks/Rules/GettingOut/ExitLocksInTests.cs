using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.GettingOut;

/// <summary>
/// 29 CFR 1910.36(d)(1) (from memory): an exit opens from inside at all times. MY COVP 2017, 6.3: inside release on cold room doors.
/// </summary>
public sealed class ExitLocksInTests
{
    [Theory]
    [InlineData("", "", Severity.Error)]
    [InlineData(", opens from inside", "", null)]
    [InlineData("", "door d3 hold to outside, east wall, centred, 900 x 2000, swings out, opens from inside", Severity.Warning)]
    public void A_cold_store_opens_from_inside_or_has_another_way_out(string release, string more, Severity? weight)
    {
        var found =
            Found("door d1 pack to outside, south wall, 700 from west, 900 x 2050, swings out\ndoor d2 pack to hold, centred, 900 x "
                + $"2000, swings hold{release}\n{more}");

        Assert.Equal(weight is { } w ? [w] : [], found.Select(f => f.Severity));
    }

    [Theory]
    [InlineData("", 1)]
    [InlineData("door d1 pack to outside, south wall, 700 from west, 900 x 2050, swings out", 0)]
    public void Cargo_doors_alone_are_no_way_out(string door, int findings)
        => Assert.Equal(
            findings,
            Found($"{door}\ndoor d2 pack to hold, centred, 900 x 2000, swings hold, opens from inside")
                .Count(f => f.Things.Contains("pack")));

    [Fact]
    public void A_way_out_through_a_cold_store_is_none_to_rely_on()
    {
        var finding = Assert.Single(Found("""
            door d2 pack to hold, centred, 900 x 2000, swings hold, opens from inside
            door d3 hold to outside, south wall, 700 from east, 900 x 2000, swings out, opens from inside
            """, "shed 6000 x 3000 x 2600"));

        Assert.Equal(["pack"], finding.Things);
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    private static IReadOnlyList<Finding> Found(
        string doors, string shell = "container 20 ft high-cube\n  doors west") => CheckedPlan.Check($"""
        plan "Cold end"
          units metric
        shell {shell}
        room pack "Packing" dry from west to 3500
        room hold "Holding" cold from 3500 to east
        {doors}
        """, "exit-locks-in");
}
