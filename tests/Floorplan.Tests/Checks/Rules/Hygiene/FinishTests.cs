using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.Hygiene;

public sealed class FinishTests
{
    private const string Whole = "finish floor \"resin, coved\", walls \"panel\", ceiling \"panel\"";

    [Fact]
    public void A_sketch_without_finishes_is_left_in_peace() => Assert.Empty(Found("", "", ""));

    [Fact]
    public void A_plan_with_a_crew_and_no_finish_gets_one_note_for_all()
    {
        var finding = Assert.Single(Found("", "", "day\n  crew gut 1"));

        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(["gut", "pack"], finding.Things);
    }

    [Fact]
    public void One_room_finished_and_the_other_forgotten_is_found()
        => Assert.Equal(["pack"], Assert.Single(Found(Whole, "", "")).Things);

    [Fact]
    public void A_room_that_is_kept_dry_needs_none() => Assert.Empty(Found(Whole, "kept dry", ""));

    [Fact]
    public void A_floor_that_meets_the_wall_in_a_square_corner_is_found()
        => Assert.Contains(
            "base, where floor and wall meet",
            Assert.Single(Found(Whole, "finish floor \"resin\", walls \"panel\", ceiling \"panel\"", "")).Message);

    [Fact]
    public void A_curb_under_the_panels_is_as_good()
        => Assert.Empty(Found(Whole, "finish floor \"resin\", walls \"panel\", ceiling \"panel\", base \"curb\"", ""));

    [Theory]
    [InlineData("rezin, coved", "resin")]
    [InlineData("stainles, coved", "stainless")]
    public void A_slip_in_a_material_is_told_with_the_near_name(string floor, string near)
    {
        var finding = Assert.Single(Found(Whole, $"finish floor \"{floor}\", walls \"panel\", ceiling \"panel\"", ""));

        Assert.Equal(("unknown-finish", Severity.Note), (finding.Rule, finding.Severity));
        Assert.Contains($"`{near}`", finding.Mend);
    }

    [Theory]
    [InlineData("white wall tile, coved")]
    [InlineData("Quarry tiles, grey, coved")]
    [InlineData("checker plate, coving")]
    [InlineData("60 mm sandwich-panel, coved")]
    public void What_a_builder_writes_beside_the_material_is_no_slip(string floor)
        => Assert.Empty(Found(Whole, $"finish floor \"{floor}\", walls \"panel\", ceiling \"panel\"", ""));

    private static IReadOnlyList<Finding> Found(string gut, string pack, string more) => [.. CheckedPlan.Check($"""
        plan "Bream unit"
          units metric
        shell shed 8000 x 3000 x 2500
        room gut "Gutting" dirty from west to 4000
          {gut}
        room pack "Packing" clean from 4000 to east
          {pack}
        {more}
        """).Where(f => f.Rule is "finish-missing" or "unknown-finish")];
}
