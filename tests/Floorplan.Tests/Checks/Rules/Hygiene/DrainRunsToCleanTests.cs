using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class DrainRunsToCleanTests
{
    [Fact]
    public void A_line_from_the_dirty_drain_through_the_clean_one_is_found()
    {
        var finding = Assert.Single(Found("fd1", more: ", runs to fd2", ""));

        Assert.Contains("drain fd1 in Gutting (gut), dirty, runs on to fd2 in Packing (pack), clean", finding.Message);
        Assert.Equal(["fd1", "fd2"], finding.Things);
    }

    [Fact]
    public void A_line_from_clean_to_dirty_is_sound() => Assert.Empty(Found("fd1", "", ", runs to fd1"));

    [Fact]
    public void A_clean_floor_may_fall_to_the_dirty_drain()
        => Assert.Empty(CheckedPlan.Check(Plan("falls pack 2 % to fd1", "", ""), "drain-runs-to-clean"));

    [Fact]
    public void A_line_to_no_such_drain_is_told_with_a_near_name()
    {
        var mistake = Assert.Single(CheckedPlan.Bind(Plan("", ", runs to fd22", "")).Diagnostics, d => d.Severity == Severity.Error);

        Assert.Contains("no drain called `fd22`", mistake.Message);
        Assert.Contains("fd2", mistake.Help);
    }

    [Fact]
    public void Only_a_drain_runs_to_another()
        => Assert.Contains(
            CheckedPlan.Bind(Plan("water w1 cold in pack, north wall, centred, height 1200, runs to fd1", "", "")).Diagnostics, d
                => d.Message.Contains("`runs to` is not a detail of `water`"));

    private static IReadOnlyList<Finding> Found(string falls, string more, string moreClean)
        => CheckedPlan.Check(Plan($"falls gut 2 % to {falls}", more, moreClean), "drain-runs-to-clean");

    private static string Plan(string line, string more, string moreClean) => $"""
        plan "Carp unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room gut  "Gutting" dirty from west to 4000
        room pack "Packing" clean from 4000 to east
        partitions thickness 80
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out
        door d2 pack to outside, south wall, 500 from east, 900 x 2050, swings out
        drain fd1 floor in gut, centred, 100{more}
        drain fd2 floor in pack, centred, 100{moreClean}
        {line}
        """;
}
