using Floorplan.Tests.Architecture;
using Xunit;

namespace Floorplan.Tests.Cli;

/// <summary>
/// Twenty mistakes of layout that a builder makes in the poultry template, each spelt right, so that only a rule of the trade finds it.
/// Each is told first, at its place, with its measured words and what mends it.
/// </summary>
public class TwentyMistakesTests
{
    private static readonly string Template = File.ReadAllText(Repository.At("templates", "poultry-40ft.unit"));

    /// <summary>What is written, the mistake instead of it, the rule, words of the finding, words of the mend.</summary>
    public static TheoryData<string, string, string, string, string> Mistakes => new()
    {
        {
            "  outside -> d2 -> s1 -> d3 -> table", "  outside -> d5 -> d4 -> table", "unwashed-entry", "without passing a hand sink",
            "put a hand sink" },
        { "water w1 cold hot in kill", "water w1 cold in kill", "water-too-far", "needs hot water", "add a water point" },
        {
            "pack -> d4 -> rack -> d5 -> outside                    by trolley 22 in wide", "pack -> d3 -> d2 -> outside   by hand",
            "product-through-dirtier", "passes Change and wash (lobby)", "its own door to outside"
        },
        {
            "60 in x 20 in x 72 in", "60 in x 20 in x 112 in", "outside-shell", "above the finished ceiling",
            "choose a lower one by 11 15/16\"" },
        {
            "against north wall, centred\n  holds    5 shelves", "against east wall, 10 in from south, turned 90\n  holds    5 shelves",
            "panel-space", "before the panel p1", "leave 3'-0\" free" },
        { "light evis 50 fc", "", "light-missing", "has workers and no light", "add a line such as: light evis" },
        {
            "south wall, 12 in from west, 36 in x 80 in, swings out, closes itself, opens from inside, steps 4, guard",
                "south wall, 12 in from west, 36 in x 80 in, swings out, closes itself, opens from inside",
            "step-at-door", "2'-0\" above the ground", "write `steps 4` on d1"
        },
        { "3 in from south, 32 in x 78 in", "3 in from south, 20 in x 78 in", "unreachable", "d4 is only 1'-8\" wide", "widen the way" },
        { "60 in x 24 in x 36 in", "60 in x 24 in x 48 in", "bench-height", "too high for standing work", "lower it by 5\"" },
        {
            "120 lb empty, 1500 lb full", "120 lb empty, 15000 lb full", "floor-overloaded", "the floor under Chill tank (chill)",
            "spread Chill tank" },
        {
            "offal-bin -> d1 -> outside                             by trolley 20 in wide 20 in long, after work",
                "offal-bin -> d1 -> outside   by trolley 20 in wide 20 in long",
            "waste-meets-product", "at the same time of day", "carry it `after work`"
        },
        {
            "  offal-bin -> d1 -> outside                             by trolley 20 in wide 20 in long, after work\n", "",
            "way-out-for-waste-missing", "has no way out", "offal-bin -> a door -> outside" },
        { "birds, 5 lb each", "birds, 60 lb each", "lift-too-heavy", "60 lb are lifted by hand", "lift with two people" },
        {
            "falls kill 2 % to fd1", "falls kill 12 % to fd1", "fall-not-possible", "the floor build-up is 2 1/2\"",
            "slope the floor 2.4 %" },
        {
            "air   supply evis, exhaust kill", "air   supply kill, exhaust evis", "air-runs-to-clean", "runs from dirty to clean",
            "air supply evis, exhaust kill" },
        {
            "34 in from west\n  worker   north", "34 in from west\n  worker   south", "nowhere-to-stand", "nowhere to stand: a wall",
            "stand on another side" },
        {
            "south wall, 12 in from east, 36 in x 78 in", "south wall, 12 in from east, 24 in x 78 in", "exit-door-narrow",
            "leads out and is 2'-0\" wide", "make door d5 2'-8\" wide" },
        { "34 in apart", "20 in apart", "elbow-room", "1'-8\" of width each", "farther apart" },
        {
            "light kill 30 fc", "light kill 30 fc\noutlet o1 in evis, north wall, 60 in from east, height 44 in, 20 A 120 V",
            "outlet-unprotected", "which is washed down, and has no protection", "licensed electrician"
        },
        {
            "light kill 30 fc", "light kill 30 fc\nswitch k1 in evis, south wall, 60 in from west, height 24 in", "switch-out-of-reach",
            "Chill tank (chill) stands before switch k1", "free stretch of wall" },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_of_layout_is_told_first_in_the_words_of_the_trade(
        string written, string mistake, string rule, string said, string mend)
    {
        int at = Template.IndexOf(written, StringComparison.Ordinal);
        Assert.True(at >= 0, $"the template no longer holds: {written}");

        string[] lines = CliRun.WithInput(Template[..at] + mistake + Template[(at + written.Length)..], "check", "-").Out.Split('\n');

        Assert.Matches(": (error|warning): ", lines[0]);
        Assert.EndsWith($"[1 {rule}]", lines[0]);
        Assert.Contains(said, lines[0]);
        Assert.Contains(mend, lines.First(l => l.StartsWith("  mend: ", StringComparison.Ordinal)));
    }

    [Fact]
    public void They_are_twenty_and_of_twenty_rules() => Assert.Equal(20, Mistakes.Select(m => m[2]).Distinct().Count());
}
