using Floorplan.Checks.Findings;
using Floorplan.Language.Diagnostics;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Checks.Rules.WaterAndDrain;

public sealed class BackflowTests
{
    private const string Crew = "day\n  crew wash 2";

    [Fact]
    public void A_sketch_that_speaks_of_no_guard_and_counts_no_crew_is_left_in_peace()
    {
        Assert.Empty(Found("backflow-guard-missing", "", "", ""));
        Assert.Empty(Found("air-gap-missing", "", "", ""));
    }

    [Fact]
    public void A_plan_with_a_crew_that_speaks_of_no_guard_gets_one_note_for_all()
    {
        var note = Assert.Single(Found("backflow-guard-missing", "", "", Crew));

        Assert.Equal(Severity.Note, note.Severity);
        Assert.Equal(["hz1", "hz2", "tank"], note.Things);
        Assert.Empty(Found("air-gap-missing", "", "", Crew));
    }

    [Fact]
    public void One_guard_makes_the_others_missed()
    {
        Assert.Equal(["hz2"], Assert.Single(Found("backflow-guard-missing", ", vacuum breaker", "", Crew)).Things);
        Assert.Equal(["tank"], Assert.Single(Found("air-gap-missing", ", vacuum breaker", "", Crew)).Things);
    }

    [Fact]
    public void A_guard_at_the_water_point_serves_its_hose_and_its_tank()
    {
        Assert.Equal(["hz1"], Assert.Single(Found("backflow-guard-missing", "", ", backflow preventer", "")).Things);
        Assert.Empty(Found("air-gap-missing", "", ", backflow preventer", ""));
    }

    [Fact]
    public void A_drain_has_no_vacuum_breaker()
        => Assert.Contains(
            Floorplan.Language.Syntax.SyntaxTree.Parse(
                new Floorplan.Language.Text.SourceText("drain fd1 floor in wash, centred, 100, vacuum breaker\n", "a.unit")).Diagnostics,
            d => d.Code == "unknown-detail");

    private static IReadOnlyList<Finding> Found(string rule, string firstHose, string secondPoint, string more) => CheckedPlan.Check($"""
        plan "Wash"
          units metric
        shell shed 8000 x 3000 x 2500
        room wash "Wash" dirty from west to east
        water w1 cold in wash, south wall, 500 from west, height 1200
        water w2 cold in wash, north wall, 5000 from west, height 1200{secondPoint}
        hose hz1 on w1, 6 m{firstHose}
        hose hz2 on w2, 6 m
        station tank "Tank" in wash, 1200 x 600 x 850, against north wall, 4000 from west, holds 200 L, needs cold 8 L/min
        {more}
        """, rule);
}
