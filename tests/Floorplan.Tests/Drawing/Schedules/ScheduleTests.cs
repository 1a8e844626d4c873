using Floorplan.Drawing.Schedules;
using Floorplan.Model;
using Floorplan.Sizing.Frames;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Schedules;

/// <summary>What a spreadsheet gets: every row as wide as its heads, and every thing of the plan in its row.</summary>
public sealed class ScheduleTests
{
    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    [Theory, MemberData(nameof(Templates))]
    public void Every_row_has_a_cell_for_every_head(string template) => Assert.All(
        Schedule.All(CheckedPlan.Facts(Read(template))), schedule
            => Assert.All(schedule.Rows, row => Assert.Equal(schedule.Columns.Count, row.Count)));

    [Theory, MemberData(nameof(Templates))]
    public void Every_cut_out_and_hole_has_a_row_with_its_wall(string template)
    {
        var plan = Read(template);
        var cuts = CutOuts.Of(plan);
        var schedules = Schedule.All(CheckedPlan.Facts(plan)).ToDictionary(s => s.Name);

        Assert.Equal(
            cuts.Select(c => $"{c.Wall.NameIn(plan.Shell)} {c.Opening.Id}"),
            schedules["cut-outs"].Rows.Select(r => $"{r[0]!.ToString()!.Split(',')[0]} {r[1]}"));
        Assert.Equal(ServiceHole.Of(plan).Select(h => h.Point.Id), schedules["holes"].Rows.Select(r => r[1]!.ToString()));
        Assert.Equal(plan.Rooms.Select(r => r.Label), schedules["finishes"].Rows.Select(r => r[0]!.ToString()));
    }

    private static Plan Read(string template) => CheckedPlan.Plan(File.ReadAllText(Repository.At("templates", template + ".unit")));
}
