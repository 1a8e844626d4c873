using Floorplan.Checks.Framework;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing;

/// <summary>
/// What a reader of a sheet relies on: every text can be read. Measured by <see cref="SceneAudit"/>, not by the label placer.
/// </summary>
public class SheetTextTests
{
    public static TheoryData<string, int> Sheets()
    {
        var data = new TheoryData<string, int>();
        foreach (string template in AllPlans.Templates)
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
        var pages = DrawnPlans.Set(template).OfSheet(sheet);
        Assert.NotEmpty(pages);
        var faults = pages.SelectMany(p => SceneAudit.Faults(p).Select(f => $"{p.Name}: {f}")).ToList();
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

    /// <summary>The pictures on the rule's page, of its bad and its good example.</summary>
    [Theory, MemberData(nameof(Rules))]
    public void And_for_the_pictures_on_the_page_of_every_rule(string rule)
    {
        foreach (string example in new[] { RuleCatalogue.Find(rule)!.Bad, RuleCatalogue.Find(rule)!.Good })
        {
            var picture = PlanPicture.Draw(DrawnPlans.Request(example), rule, rule);
            var faults = SceneAudit.Faults(picture);
            Assert.True(faults.Count == 0, string.Join("\n", faults));

            // There is no key beside it that a number could point to.
            Assert.DoesNotContain(picture.Items.OfType<TextItem>(), t => t.Text.Length > 1
                && t.Text[0] == 'k'
                && t.Text.Skip(1).All(char.IsDigit)
                && t.Group?.Contains(":" + t.Text, StringComparison.Ordinal) != true);
        }
    }
}
