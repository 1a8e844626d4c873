using System.Text;
using Floorplan.Benchmarks;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing;

/// <summary>All nine sheets of two hundred plans of 5 to 60 stations, some with labels of sixty letters, can be read.</summary>
public class InventedPlansTests
{
    private const int PlansInOne = 10;

    public static TheoryData<int> Tens => [.. Enumerable.Range(0, InventedPlans.Count / PlansInOne)];

    [Theory, MemberData(nameof(Tens))]
    public void No_text_overlaps_is_cut_or_leaves_the_frame_and_no_name_is_lost(int ten)
    {
        var faults = new StringBuilder();
        for (int number = ten * PlansInOne; number < (ten + 1) * PlansInOne; number++)
        {
            string text = InventedPlans.Make(number);
            var sheets = DrawnPlans.Draw(text);
            Assert.Equal(SheetSet.All.Count, sheets.Count);
            foreach (var (sheet, fault) in sheets.SelectMany(s => SceneAudit.Faults(s).Select(f => (s.Name, f))).Concat(Lost(text, sheets)))
            {
                faults.Append(number).Append(' ').Append(sheet).Append(": ").Append(fault).Append('\n');
            }
        }

        Assert.True(faults.Length == 0, faults.ToString());
    }

    /// <summary>Names that sheet 1 does not say in full anywhere. Lines of one text follow each other.</summary>
    private static IEnumerable<(string Sheet, string Fault)> Lost(string text, IReadOnlyList<SheetScene> sheets)
    {
        var plan = CheckedPlan.Plan(text);
        string words = Solid(string.Concat(sheets[0].Items.OfType<TextItem>().Select(t => t.Text)));
        return plan.Stations.Select(s => s.Label).Concat(plan.Rooms.Select(r => r.Label)).Where(l => !words.Contains(Solid(l), StringComparison.Ordinal))
            .Select(l => (sheets[0].Name, $"the name \"{l}\" is not said in full"))
            .Concat(sheets.Where(s => s.Items.OfType<TextItem>().Any(t => t.Text.EndsWith("find no room here", StringComparison.Ordinal))).Select(s => (s.Name, "lines find no room")));
    }

    private static string Solid(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
