using Floorplan.Checks.Findings;
using Floorplan.Cli.Gallery;
using Floorplan.Cli.Templates;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.WaterAndDrain;

/// <summary>Food Code 2022, 5-205.11 (WAC 246-215-05270): a hand sink can be got at at all times.</summary>
public sealed class SinkBlockedTests
{
    private const string AtWall = "against north wall, 2200 from west";

    /// <summary>
    /// Abdominal depth of a 95th-percentile man: 320 mm (ANSUR II). The ends of the sink are free; nobody washes hands from there.
    /// </summary>
    [Theory]
    [InlineData(320, 0)]
    [InlineData(318, 1)]
    public void A_person_must_fit_between_sink_and_tank(int gap, int findings)
        => Assert.Equal(findings, Found(AtWall, $"1800 from west, south of s1 gap {gap}").Count);

    [Fact]
    public void It_is_told_what_stands_in_front_and_nothing_else_is_said_of_the_two()
    {
        var all = CheckedPlan.Check(Box(AtWall, "1800 from west, south of s1 gap 100"));

        var finding = Assert.Single(all, f => f.Things.Contains("tank") && f.Things.Contains("s1"));
        Assert.Equal("sink-blocked", finding.Rule);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.StartsWith("nobody can get at the sink s1: Rinse tank (tank) stands in front of it", finding.Message);
    }

    /// <summary>
    /// Shoulder breadth of a 95th-percentile man: 567 mm (ANSUR II), so he stands 284 mm beside the tank, and at most half a place, 333
    /// mm, aside of the bowl's middle at 2400.
    /// </summary>
    [Theory]
    [InlineData(2350, 0)]
    [InlineData(2348, 1)]
    public void One_may_stand_a_little_aside(int tankFrom, int findings)
        => Assert.Equal(findings, Found(AtWall, $"{tankFrom} from west, south of s1 gap 50").Count);

    [Theory]
    [InlineData("on wheels", 0)]
    [InlineData("hung, underside 1900", 0)]
    [InlineData("hung, underside 1500", 1)]
    public void What_rolls_away_or_hangs_over_heads_is_not_in_front(string how, int findings)
        => Assert.Equal(findings, Found(AtWall, "1800 from west, south of s1 gap 100", how).Count);

    [Theory]
    [InlineData("corner north-east", 0)] // from its west side
    [InlineData("2200 from west, 1000 from south", 0)] // from its north side
    [InlineData(AtWall, 1)]
    public void A_sink_with_more_than_one_front_is_used_from_the_free_one(string sink, int findings)
        => Assert.Equal(findings, Found(sink, "in line with s1, south of s1 gap 100", size: "400 x 600 x 1000").Count);

    [Fact]
    public void A_clear_space_that_the_plan_asks_for_tells_it_alone()
    {
        var all = CheckedPlan.Check(Box(AtWall + "\n  clear south 600", "1800 from west, south of s1 gap 100"));

        Assert.Equal("clear-space-blocked", Assert.Single(all, f => f.Things.Contains("tank") && f.Things.Contains("s1")).Rule);
    }

    /// <summary>The gallery's mistake: a vat in front of a sink in the corner, with its worker between the two.</summary>
    [Fact]
    public void The_classic_sink_behind_a_tank_is_one_finding()
    {
        var mistake = ClassicMistakes.All.Single(m => m.Name == "sink-behind-tank");

        var all = CheckedPlan.Check(mistake.Spoil(TemplateShelf.Find(mistake.Template)!));

        var finding = Assert.Single(all, f => f.Things.Contains("s3") && f.Things.Contains("vat"));
        Assert.Equal(mistake.Rule, finding.Rule);
        Assert.DoesNotContain(all, f => f.Rule == "nowhere-to-stand");
    }

    private static IReadOnlyList<Finding> Found(string sink, string tank, string more = "", string size = "1200 x 600 x 1000")
        => [.. CheckedPlan.Check(Box(sink, tank, more, size)).Where(f => f.Rule == "sink-blocked")];

    private static string Box(string sink, string tank, string more = "", string size = "1200 x 600 x 1000") => $"""
        plan "Sink and tank"
          units metric
        shell container 20 ft high-cube
        room gut "Gutting" dirty from west to east
        door d1 gut to outside, south wall, 400 from west, 900 x 2050, swings out
        sink s1 hand in gut
          size  400 x 350 x 900
          place {sink}
        station tank "Rinse tank" in gut
          size  {size}
          place {tank}
          {more}
        """;
}
