using Floorplan.Drawing.Sheets.WaterAndDrainage;
using Floorplan.Model.Stations;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>Who is served by which point on sheet 4.</summary>
public class WaterTests
{
    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    /// <summary>A bench lets water go over the floor, which ends at the wall; a sink has a pipe.</summary>
    [Theory]
    [InlineData("sink s1 hand in lobby, 400 x 350, corner north-west", "s1")]
    [InlineData("station s1 \"Bench\" in lobby\n  size 400 x 350 x 900\n  place corner north-west\n  needs drain", null)]
    public void Only_the_waste_of_a_sink_runs_to_the_drain_of_another_room(string thing, string? served)
    {
        var runs = PipeRun.Of(CheckedPlan.Facts(CheckedPlan.Plan($"""
            plan "Lobby"
              units metric
            shell shed 8000 x 3000 x 2800
            room lobby "Lobby" staff from west to 2000
            room work "Work" clean from 2000 to east
            drain fd1 floor in work, 3000 from west, centred, 100
            {thing}
            """)).Supply);
        Assert.Equal(served is null
            ? []
            : [served], runs.Where(r => r is { Kind: NeedKind.Drain, Point.Id: "fd1" }).SelectMany(r => r.Uses).Select(u => u.Id));
    }

    /// <summary>The plumber fits what the checks count on.</summary>
    [Fact]
    public void Air_gaps_and_guards_against_flowing_back_stand_in_the_tables()
    {
        var facts = DrawnPlans.Request(File.ReadAllText(Architecture.Repository.At("templates", "poultry-40ft.unit"))).Facts;
        var plan = facts.Plan;
        Assert.Equal("hose, vacuum breaker", PointTable.Of(facts, plan.Services).Rows.Single(r => r[0].Text == "hz1")[1].Text);
        var needs = NeedTable.Of(facts);
        Assert.Equal("Air gap", needs.Columns[^1]);
        Assert.Equal("2\"", needs.Rows.Single(r => r[1].Text == "Scald tank")[^1].Text);
    }

    /// <summary>A shipped plan is one to build from: no wet thing in it is left without water or drain.</summary>
    [Theory]
    [MemberData(nameof(Templates))]
    public void Every_wet_thing_of_a_template_is_served(string template)
    {
        var facts = DrawnPlans.Request(File.ReadAllText(Architecture.Repository.At("templates", template + ".unit"))).Facts;
        Assert.All(NeedTable.Of(facts).Rows, row => Assert.DoesNotContain(row, c => c.Text.Contains("no point", StringComparison.Ordinal)));
    }
}
