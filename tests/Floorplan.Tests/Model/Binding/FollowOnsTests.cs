using Floorplan.Language.Diagnostics;
using Xunit;

namespace Floorplan.Tests.Model.Binding;

/// <summary>One slip is told once, and never hides another one.</summary>
public class FollowOnsTests
{
    private const string Bench = "station bench \"Bench\" in wet\n  size 1200 x 600 x 900\n  place corner north-west\n";
    private const string BenchFlow = "flow product\n  outside -> bench -> outside   by hand\n";

    [Theory]
    [InlineData("station thing \"Thing\" in wet\n  size 1200 x 6 kg\n  place corner south-west\n", "wrong-unit")]
    [InlineData("station thing \"Thing\" wet\n  size 1200 x 600\n  place corner south-west\n", "not-expected")]
    [InlineData("station thing \"Thing in wet\n  size 1200 x 600\n  place corner south-west\n", "text-not-closed")]
    [InlineData("station thing \"Thing\" in wet\n  size 1200 x 600\n  place against south wall 300 from west\n", "left-over")]
    [InlineData("station thing \"Thing\" in wet\nsize 1200 x 600\n  place corner south-west\n", "unknown-statement")]
    [InlineData(
        "statoin thing \"Thing\" in wet\n  size 1200 x 600\n  place corner south-west\nflow product\n  outside -> thing   by hand\n",
        "unknown-statement")]
    [InlineData("machine thing \"Thing\" in wet\nflow product\n  outside -> thing   by hand\n", "unknown-statement")]
    [InlineData("hole p1 in wet, south wal, 300 from west, 50\n", "not-expected")]
    [InlineData("station thing \"Thing\" like tabel in wet\n  place corner south-west\n", "unknown-kind")]
    [InlineData("door d1 wet to outside, south wall, centred\nflow people\n  outside -> d1 -> wet\n", "size-missing")]
    public void What_follows_from_a_line_that_was_not_read_is_not_told(string lines, string code)
        => Assert.Equal(code, PlanTexts.Mistake(PlanTexts.TwoRooms + lines).Code);

    [Fact]
    public void That_a_kind_gives_no_more_is_told_and_not_that_sizes_are_missing()
    {
        string kind = "kind bench\n  size 12 x 60 x 900\n" + string.Concat(Enumerable.Repeat("  clear south 10\n", 1_900));
        string benches = string.Concat(Enumerable.Range(0, 120).Select(i => $"station b{i} like bench in wet, at {i * 20}, 0\n"));
        string flow = "flow product\n  outside -> b118 -> b119 -> outside   by hand\n";
        Assert.Equal("kinds-give-too-much", PlanTexts.Mistake(PlanTexts.TwoRooms + kind + benches + flow).Code);
    }

    [Fact]
    public void A_slip_in_one_detail_does_not_hide_that_another_is_missing()
    {
        var bound = PlanTexts.Bind(PlanTexts.TwoRooms + "station thing \"Thing\" in wet\n  work 6 kg each\n  place corner south-west\n");
        Assert.Equal(["size-missing", "wrong-unit"], bound.Diagnostics.Select(d => d.Code));
    }

    [Fact]
    public void A_name_that_nothing_has_is_told_at_its_first_place_with_the_others_beside_it()
    {
        var mistake =
            PlanTexts.Mistake(PlanTexts.TwoRooms + Bench + BenchFlow.Replace("bench", "bensh", StringComparison.Ordinal)
                + BenchFlow.Replace("bench", "bensh", StringComparison.Ordinal));
        Assert.Equal("did you mean `bench`?", mistake.Help);
        Assert.Equal([14], mistake.Related!.Select(r => r.Span.Position.Line));
    }

    [Fact]
    public void A_kind_does_not_hide_that_no_thing_has_its_name()
        => Assert.Equal(
            "unknown-stop",
            PlanTexts.Mistake(PlanTexts.TwoRooms + "kind table\n  size 1200 x 600\nflow product\n  outside -> table   by hand\n").Code);

    [Fact]
    public void A_gap_between_rooms_is_an_error_when_an_opening_leads_over_it_and_the_opening_is_not_told_again()
    {
        string apart = PlanTexts.TwoRooms.Replace("from 6000 to east", "from 6500 to east", StringComparison.Ordinal);
        var mistake = PlanTexts.Mistake(apart);
        Assert.Equal((Severity.Error, "floor-without-room"), (mistake.Severity, mistake.Code));
        Assert.Equal("room dry \"Dry room\" clean from 6500 to east", mistake.Span.Value);
        Assert.Equal("`h1` is to join `wet` and `dry`", Assert.Single(mistake.Related!).Message);

        var note = PlanTexts.Mistake(string.Join('\n', apart.Split('\n').Where(l => !l.StartsWith("hatch", StringComparison.Ordinal))));
        Assert.Equal((Severity.Warning, "floor-without-room"), (note.Severity, note.Code));
    }

    [Fact]
    public void Of_rooms_that_overlap_the_opening_between_them_is_not_told()
        => Assert.Equal(
            "rooms-overlap",
            PlanTexts.Mistake(PlanTexts.TwoRooms.Replace("from 6000 to east", "from 5500 to east", StringComparison.Ordinal)).Code);

    [Fact]
    public void A_room_that_cannot_be_laid_does_not_leave_a_gap_as_well()
        => Assert.Equal(
            "room-outside-shell",
            PlanTexts.Mistake(PlanTexts.TwoRooms.Replace("from 6000 to east", "from 6000 to 12000", StringComparison.Ordinal)).Code);

    [Fact]
    public void A_thing_larger_than_the_shell_is_told_by_its_size_and_the_plans_units()
    {
        var mistake =
            PlanTexts.Mistake(PlanTexts.TwoRooms + Bench.Replace("1200 x 600 x 900", "1200 cm x 60 cm", StringComparison.Ordinal)
                + BenchFlow);
        Assert.Equal("`bench` is 12000 mm x 600 mm, and the inside of the shell is 10000 mm x 4000 mm", mistake.Message);
        Assert.Equal(
            "check its size and the units: a bare number is millimetres in this plan, and `48 in` says another unit", mistake.Help);
    }

    [Fact]
    public void Ways_out_speak_the_plans_units()
    {
        var mistake = PlanTexts.Mistake("""
            plan "In feet"
              units feet
            shell shed 33 ft x 14 ft x 9 ft
            room wet dirty from west to east
            station thing in wet, corner south-west
            """);
        Assert.Equal("add a line such as `size 48 x 24 x 36`, or take a kind that has one", mistake.Help);
    }
}
