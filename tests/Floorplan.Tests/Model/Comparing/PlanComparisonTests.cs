using Floorplan.Model.Comparing;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Model.Comparing;

/// <summary>What a designer hears about two revisions: what moved by how much, what is new, gone or different.</summary>
public sealed class PlanComparisonTests
{
    private const string Was = """
        plan "Box"
          units metric
        shell shed 6000 x 4000 x 2600
        room work "Work" dry from west to east
        door d1 work to outside, south wall, 400 from west, 900 x 2050, swings out
        station bench "Bench" in work
          size 1500 x 600 x 900
          place against north wall, 500 from west
          worker south
        outlet x1 in work, east wall, 500 from south, height 1100, 16 A 230 V
        flow product
          outside -> d1 -> bench   by hand
        """;

    [Fact]
    public void A_plan_does_not_differ_from_itself() => Assert.Empty(Compare(Was, Was));

    [Fact]
    public void A_figure_written_in_another_unit_is_no_difference()
        => Assert.Empty(
            Compare(
                Was, Was.Replace("500 from west", "0.5 m from west", StringComparison.Ordinal)
                    .Replace("900 x 2050", "90 cm x 2.05 m", StringComparison.Ordinal)));

    [Theory]
    [InlineData("500 from west", "800 from west", "station Bench (bench): moved 300 mm east")]
    [InlineData(
        "against north wall, 500 from west", "200 from north, 300 from west", "station Bench (bench): moved 200 mm west and 200 mm south")]
    [InlineData(
        "1500 x 600 x 900", "1800 x 600 x 900", "station Bench (bench): size 1800 mm x 600 mm x 900 mm, was 1500 mm x 600 mm x 900 mm")]
    [InlineData("\"Bench\"", "\"Trim bench\"", "station Trim bench (bench): called \"Trim bench\", was \"Bench\"")]
    [InlineData("  worker south\n", "", "station Bench (bench): workers no longer said, was 1 south")]
    [InlineData("16 A 230 V", "16 A 230 V, gfci", "outlet x1: guard gfci, not said before")]
    [InlineData("swings out", "swings out, closes itself", "door d1: closes itself, not said before")]
    [InlineData("x 4000 x 2600", "x 4000 x 2700", "shell: ceiling 2700 mm, was 2600 mm")]
    [InlineData("by hand", "by hand 12 kg liquid", "flow product outside -> d1 -> bench: load 12 kg liquid, not said before")]
    [InlineData(
        "by hand", "by trolley 600 wide 900 long",
        "flow product outside -> d1 -> bench: by trolley, was hand; size 600 mm x 900 mm, not said before")]
    [InlineData("swings out", "swings out, frame tube 50 x 50 x 3", "door d1: frame tube 50 mm x 50 mm x 3 mm, not said before")]
    [InlineData(
        "  worker south\n", "  worker south\n  needs cold, inlet 25, air gap 50\n",
        "station Bench (bench): needs cold, not said before; air gap 50 mm, not said before; inlet 25 mm, not said before")]
    public void A_change_is_told_with_its_numbers(string written, string changed, string said)
    {
        Assert.Contains(written, Was);
        var changes = Compare(Was, Was.Replace(written, changed, StringComparison.Ordinal));
        Assert.Contains(changes, c => c.Text.StartsWith(said, StringComparison.Ordinal));
    }

    /// <summary>The comparison said "1 difference" of these five.</summary>
    [Fact]
    public void What_a_tank_holds_its_wheels_its_stay_and_its_waste_and_what_a_sink_is_for_are_told()
    {
        const string more = """

            station tank "Tank" in work
              round 900 x 850
              place 500 from east, 500 from south
              holds 80 L
              stays 20 min
              waste 0.1 kg each to scraps
            bin  scraps in work, 400 x 400, 300 from west, 300 from south
            sink s1 hand in work, 400 x 350, 900 from west, 300 from south
            """;
        string now = (Was + more).Replace("80 L", "90 L", StringComparison.Ordinal).Replace("20 min", "25 min", StringComparison.Ordinal)
            .Replace("0.1 kg", "0.2 kg", StringComparison.Ordinal).Replace("850\n", "850\n  on wheels\n", StringComparison.Ordinal)
                .Replace("s1 hand", "s1 wash", StringComparison.Ordinal);
        Assert.Equal(
            [
                "station Tank (tank): stays 25 min, was 20 min; holds 90 L, was 80 L; waste 0.2 kg to scraps, was 0.1 kg to scraps; on "
                    + "wheels, not said before",
                "sink s1: for wash, was hand",
            ],
            Compare(Was + more, now).Select(c => c.Text));
    }

    [Fact]
    public void What_a_point_brings_and_what_guards_it_is_told_once()
    {
        const string water = "\nwater w1 cold in work, north wall, 500 from east, height 1200\nhose hz1 on w1, 6 m";
        Assert.Equal(
            ["hose hz1: vacuum breaker, not said before", "water w1: hot, not said before"],
            Compare(Was + water, Was + water.Replace("w1 cold", "w1 cold hot", StringComparison.Ordinal) + ", vacuum breaker")
                .Select(c => c.Text).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_appears_and_what_vanishes_has_its_place()
    {
        string now = Was.Replace("outlet x1", "outlet x2", StringComparison.Ordinal);
        var changes = Compare(Was, now);
        var appeared = Assert.Single(changes, c => c.Kind == ChangeKind.Appeared);
        Assert.Equal("outlet x2 is new: in work, wall east, height 1100 mm, rated 16 A 230 V", appeared.Text);
        Assert.NotNull(appeared.Is);
        var vanished = Assert.Single(changes, c => c.Kind == ChangeKind.Vanished);
        Assert.Equal("outlet x1 is gone", vanished.Text);
        Assert.NotNull(vanished.Was);
    }

    [Fact]
    public void Another_way_of_a_stream_is_told()
        => Assert.Equal(
            ["flow product outside -> d1 -> bench -> outside is new: by hand", "flow product outside -> d1 -> bench is gone"],
            Compare(Was, Was.Replace("d1 -> bench ", "d1 -> bench -> outside ", StringComparison.Ordinal)).Select(c => c.Text));

    /// <summary>Forward and back tell of the same things.</summary>
    [Fact]
    public void Seen_from_the_other_side_new_is_gone()
    {
        string poultry = File.ReadAllText(Repository.At("templates", "poultry-40ft.unit"));
        string changed = poultry.Replace("hose  hz2 on w2, 25 ft\n", "", StringComparison.Ordinal)
            .Replace("56 in x 26 in", "60 in x 26 in", StringComparison.Ordinal);
        Assert.NotEqual(poultry, changed);
        Assert.Equal(
            Compare(poultry, changed).Select(c => (c.Id, Other(c.Kind))).Order(),
            Compare(changed, poultry).Select(c => (c.Id, c.Kind)).Order());

        static ChangeKind Other(ChangeKind kind)
            => kind switch { ChangeKind.Appeared => ChangeKind.Vanished, ChangeKind.Vanished => ChangeKind.Appeared, _ => kind };
    }

    private static IReadOnlyList<PlanChange> Compare(string was, string now)
        => PlanComparison.Of(CheckedPlan.Plan(was), CheckedPlan.Plan(now)).Changes;
}
