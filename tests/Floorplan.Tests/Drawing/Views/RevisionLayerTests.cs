using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Model.Comparing;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Views;

/// <summary>A revision drawn: clouds round what changed, numbered as in the list.</summary>
public class RevisionLayerTests
{
    private static readonly string Was = File.ReadAllText(Repository.At("templates", "poultry-40ft.unit"));

    private static readonly string Now = Was
        .Replace("56 in x 26 in x 34 in", "60 in x 26 in x 34 in", StringComparison.Ordinal)
        .Replace("12 in from east, 36 in x 78 in", "18 in from east, 36 in x 78 in", StringComparison.Ordinal)
        .Replace(
            "drain fd2 floor in evis, centred, 80 in from west, 4 in", "drain fd3 floor in evis, centred, 90 in from west, 4 in",
            StringComparison.Ordinal)
        .Replace("to fd2", "to fd3", StringComparison.Ordinal);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Every_changed_thing_is_clouded_on_the_plans(int sheet)
    {
        var request = Request();
        var pages = SheetSet.Draw(request, [sheet]);
        for (int i = 0; i < request.Changes.Count; i++)
        {
            if ((request.Changes[i].Is ?? request.Changes[i].Was) is not null && request.Changes[i].Thing != "room")
            {
                Assert.True(pages.Items<ArcItem>().Count(a => a.Group == $"change:{i + 1}") >= 4, request.Changes[i].Text);
                Assert.Contains(pages.Texts(), t => t.Group == $"change:{i + 1}" && t.Text == $"#{i + 1}");
            }
        }
    }

    [Fact]
    public void Sheet_1_lists_them_all()
    {
        var request = Request();
        string all = string.Join(' ', SheetSet.Draw(request, [1]).Texts().Select(t => t.Text));
        Assert.Contains("Changes since revision A", all);
        Assert.Contains("fd2 is gone", all);
        Assert.Contains("moved 6\" west", all);
    }

    [Fact]
    public void Texts_stay_clear_of_each_other()
    {
        foreach (var sheet in SheetSet.Draw(Request(), [1, 4]))
        {
            Assert.Empty(SceneAudit.Faults(sheet));
        }
    }

    /// <summary>Their numbers stand on floors of any tint.</summary>
    [Fact]
    public void Numbers_of_changes_stand_out_from_the_floor()
    {
        foreach (var sheet in SheetSet.Draw(Request(), [1, 2, 3, 4, 5]))
        {
            Assert.Empty(TextContrast.Faults(sheet));
        }
    }

    private static SheetRequest Request()
    {
        var request = DrawnPlans.Request(Now);
        var changes = PlanComparison.Of(CheckedPlan.Plan(Was), request.Plan).Changes;
        Assert.True(changes.Count >= 4, string.Join('\n', changes.Select(c => c.Text)));
        return request with { Changes = changes, Since = "revision A" };
    }
}
