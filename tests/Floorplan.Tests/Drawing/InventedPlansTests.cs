using System.Text;
using Floorplan.Benchmarks;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Model.Openings;
using Floorplan.Model.Services;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Checks.Support;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing;

/// <summary>All ten sheets of two hundred plans of 5 to 60 stations, some with labels of sixty letters, can be read.</summary>
public class InventedPlansTests
{
    private const int Parts = 20;

    /// <summary>
    /// All take more than a minute, so they are drawn where the suite runs whole; else every 21st, which has every kind of shell and
    /// name.
    /// </summary>
    private static readonly int Step = Thoroughness.Whole ? 1 : 21;

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Parts)];

    [Theory, MemberData(nameof(Numbers))]
    public void No_text_overlaps_is_cut_or_leaves_the_frame_and_no_name_is_lost(int part)
    {
        var faults = new StringBuilder();
        foreach (int number in Enumerable.Range(0, InventedPlans.Count).Where(n => n % Step == 0 && n / Step % Parts == part))
        {
            string text = InventedPlans.Make(number);
            var sheets = DrawnPlans.Draw(text);
            Assert.Equal(SheetSet.All.Select(s => s.Number), sheets.Select(s => s.Sheet).Distinct());
            foreach (var (sheet, fault) in sheets.SelectMany(s => SceneAudit.Faults(s).Select(f => (s.Name, f))).Concat(Lost(text, sheets)))
            {
                faults.Append(number).Append(' ').Append(sheet).Append(": ").Append(fault).Append('\n');
            }
        }

        Assert.True(faults.Length == 0, faults.ToString());
    }

    /// <summary>Names that no sheet says in full. Lines of one text follow each other.</summary>
    private static IEnumerable<(string Sheet, string Fault)> Lost(string text, IReadOnlyList<SheetScene> sheets)
    {
        var plan = CheckedPlan.Plan(text);
        string words = Solid(string.Join('\n', sheets.Select(s => string.Concat(s.Items.OfType<TextItem>().Select(t => t.Text)))));
        string[] names =
        [
            .. plan.Stations.Select(s => s.Label), .. plan.Rooms.Select(r => r.Label), .. plan.Flows.Select(f => f.Label),
            .. plan.Stations.SelectMany(s => s.Clears).Select(c => c.Purpose),
            .. plan.Openings.Where(o => o.Kind != OpeningKind.CargoDoor).Select(o => o.Id),
            .. plan.Services.Where(s => s is not RoomService).Select(s => s.Id),
        ];
        return names.Where(n => !words.Contains(Solid(n), StringComparison.Ordinal))
            .Select(n => ("no sheet", $"the name \"{n}\" is not said in full"));
    }

    private static string Solid(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
