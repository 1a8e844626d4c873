using Floorplan.Checks.Framework;
using Floorplan.Drawing.Sheets;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing;

/// <summary>What a reader of a sheet relies on: every text can be read. Measured by <see cref="SceneAudit"/>, not by the label placer.</summary>
public class SheetTextTests
{
    public static TheoryData<string, int> Sheets()
    {
        var data = new TheoryData<string, int>();
        foreach (string template in DrawnPlans.Templates)
        {
            foreach (int sheet in SheetSet.All.Select(s => s.Number))
            {
                data.Add(template, sheet);
            }
        }

        return data;
    }

    [Theory, MemberData(nameof(Sheets))]
    public void No_text_of_a_template_overlaps_another_or_is_cut_by_a_heavy_line_or_leaves_the_frame(string template, int sheet)
    {
        var drawn = DrawnPlans.Template(template).Single(s => s.Name[0] == (char)('0' + sheet));
        var faults = SceneAudit.Faults(drawn);
        Assert.True(faults.Count == 0, string.Join("\n", faults));
    }

    public static TheoryData<string> Rules => [.. RuleCatalogue.All.Select(r => r.Name)];

    [Theory, MemberData(nameof(Rules))]
    public void The_same_holds_for_the_bad_example_of_every_rule(string rule)
    {
        foreach (var sheet in DrawnPlans.Draw(RuleCatalogue.Find(rule)!.Bad))
        {
            var faults = SceneAudit.Faults(sheet);
            Assert.True(faults.Count == 0, sheet.Name + ":\n" + string.Join("\n", faults));
        }
    }
}
