using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

/// <summary>The three rules of waste over one small unit: a gutting bench with its bin, a clean room beside it.</summary>
public sealed class WasteTests
{
    [Fact]
    public void Waste_and_product_through_one_door_at_once_is_a_warning()
    {
        var finding = Assert.Single(Found("waste-meets-product", "offal -> d1 -> outside   by hand"));

        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Contains("d1", finding.Things);
        Assert.Contains("waste from offal to outside", finding.Message);
        Assert.EndsWith("at door d1, at the same time of day", finding.Message);
    }

    [Fact]
    public void After_work_the_shared_door_is_a_note()
        => Assert.Equal(
            Severity.Note, Assert.Single(Found("waste-meets-product", "offal -> d1 -> outside   by hand, after work")).Severity);

    [Fact]
    public void Waste_with_its_own_door_meets_nothing() => Assert.Empty(Found("waste-meets-product", "offal -> d2 -> outside   by hand"));

    [Fact]
    public void Waste_pumped_away_meets_nothing() => Assert.Empty(Found("waste-meets-product", "offal -> d1 -> outside   by pump"));

    [Fact]
    public void Waste_led_through_the_clean_room_is_found()
    {
        var finding = Assert.Single(Found("waste-through-clean", "offal -> d3 -> d4 -> outside   by hand"));

        Assert.Contains("pack", finding.Things);
        Assert.Contains("goes through Packing (pack)", finding.Message);
    }

    [Fact]
    public void Waste_made_in_a_clean_room_may_leave_it()
        => Assert.Empty(Found("waste-through-clean", "trimmings -> d4 -> outside   by hand"));

    [Theory]
    [InlineData("offal -> d2 -> outside   by hand", 0)]
    [InlineData("offal -> fd1   by pump", 0)]
    [InlineData("offal -> d2   by hand", 0)]
    [InlineData("offal -> trimmings   by hand", 1)]
    [InlineData("bench -> offal   by hand", 1)]
    public void Waste_must_end_outside_or_in_a_drain(string way, int findings)
        => Assert.Equal(findings, Found("way-out-for-waste-missing", way).Count);

    [Fact]
    public void Waste_that_goes_round_in_a_circle_has_no_way_out()
        => Assert.Single(Found("way-out-for-waste-missing", "offal -> trimmings -> offal   by hand"));

    [Fact]
    public void The_end_of_the_chain_is_named_and_what_fills_it()
    {
        var finding = Assert.Single(Found("way-out-for-waste-missing", "offal -> trimmings   by hand"));

        Assert.Equal("what collects in trimmings, from offal, has no way out", finding.Message);
    }

    private static IReadOnlyList<Finding> Found(string rule, string wasteWay) => CheckedPlan.Check($"""
        plan "Perch unit"
          units metric
        shell shed 12 m x 3 m x 2.5 m
        room gut "Gutting" dirty from west to 8000
        room pack "Packing" clean from 8000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out
        door d2 gut to outside, south wall, 6500 from west, 900 x 2050, swings out
        door d3 gut to pack, 300 from south, 900 x 2050, swings pack, closes itself
        door d4 pack to outside, south wall, 500 from east, 900 x 2050, swings out
        station bench "Gutting bench" in gut
          size 1500 x 600 x 900
          place against north wall, 2500 from west
          worker south
        bin offal 60 L in gut, 450 x 450, against north wall, 6000 from west
        bin trimmings 60 L in pack, 450 x 450, against north wall, 1000 from west
        drain fd1 floor in gut, 5000 from west, centred, 100
        flow product
          outside -> d1 -> bench   by hand
        flow waste
          {wasteWay}
        """, rule);
}
