using Floorplan.Checks.Framework;
using Floorplan.Tests.Cli;
using Xunit;

namespace Floorplan.Tests.Checks.Framework;

public sealed class LineChangeTests
{
    private const string Plan = "room a \"A\"\n  place 1\ndoor d1 a\ndoor d2 a\n  place 2";

    [Fact]
    public void A_line_becomes_another_or_goes_and_lines_come_after_it()
        => Assert.Equal(
            "room a \"A\"\n  place 9\ndoor d1 a\nhatch h1 a\nhatch h2 a",
            LineChange.Apply(
                Plan, [
                    new("place 1", "  place 9"), LineChange.After("door d1", "hatch h1 a", "hatch h2 a"), LineChange.Without("door d2"),
                    LineChange.Without("place 2")]));

    [Theory]
    [InlineData("door")]
    [InlineData("hatch")]
    public void A_start_names_one_line(string start)
        => Assert.Throws<InvalidOperationException>(() => LineChange.Apply(Plan, [LineChange.Without(start)]));

    /// <summary>No example needs more than three changes, so that a page shows at a glance what mends it.</summary>
    [Fact]
    public void Examples_are_mended_by_few_lines()
        => Assert.All(RuleCatalogue.All, r => Assert.InRange(r.Mended.Count, 1, 3));

    [Fact]
    public void The_page_names_the_changed_lines()
    {
        string page = CliRun.Of("explain", "overlap").Out;
        Assert.Contains("  was     place against north wall, 2300 from west\n", page);
        Assert.Contains("  now     place against north wall, east of table\n", page);
    }
}
