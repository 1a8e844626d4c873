using Floorplan.Drawing.Schedules;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>Width and depth are the thing's own, as the plan says them, on every sheet and in the CSV, however it is turned.</summary>
public class ItemSizeTests
{
    private static string PlanTurned(int degrees) => $"""
        plan "Turned"
        shell container 20 ft high-cube
          lining walls 50, ceiling 50, floor 50
          doors east
        room work "Work room" dry from west to east
        station bench "Sorting bench" in work
          size 1650 x 640 x 910
          place at 1500, 300
          turned {degrees}
        station rack "Rack" in work
          size 450 x 1150 x 1800
          place at 4000, 300
          turned {degrees}
        """;

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(180)]
    [InlineData(270)]
    public void A_turned_item_has_the_same_width_and_depth_everywhere(int degrees)
    {
        string plan = PlanTurned(degrees);
        var set = DrawnPlans.Draw(plan, [1, 8]);
        foreach (int sheet in new[] { 1, 8 })
        {
            string[] texts = [.. set.OfSheet(sheet).Texts().Select(t => t.Text.Replace(" ", "", StringComparison.Ordinal))];
            Assert.Contains("1650×640×910", texts);
            Assert.Contains("450×1150×1800", texts);
            Assert.Contains(texts, t => t.Contains("wide×deep×high", StringComparison.OrdinalIgnoreCase));
            Assert.DoesNotContain(texts, t => t.Contains("640×1650", StringComparison.Ordinal));
            Assert.DoesNotContain(texts, t => t.Contains("1150×450", StringComparison.Ordinal));
            Assert.DoesNotContain(texts, t => t.Contains("long×wide", StringComparison.OrdinalIgnoreCase));
        }

        var stations = Schedule.All(CheckedPlan.Facts(CheckedPlan.Plan(plan))).Single(s => s.Name == "stations");
        var columns = stations.Columns.ToList();
        var (width, depth) = (columns.IndexOf("width mm"), columns.IndexOf("depth mm"));
        Assert.Equal([("1650", "640"), ("450", "1150")], stations.Rows.Select(r => (Text(r[width]), Text(r[depth]))));
    }

    /// <summary>The name inside the outline says it too, where there is room.</summary>
    [Fact]
    public void The_label_on_the_plan_says_what_the_table_says()
    {
        string plan = PlanTurned(90).Replace("1650 x 640", "2100 x 1150", StringComparison.Ordinal);
        var labels =
            DrawnPlans.Draw(plan, [1]).Texts().Where(t => t.Group == "station:bench").Select(t => t.Text);
        Assert.Contains("2100×1150", labels);
    }

    private static string Text(object? cell) => FormattableString.Invariant($"{cell}");
}
