using Floorplan.Checks.Framework;
using Floorplan.Drawing.Scene;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Drawing.Sheets;

/// <summary>Nothing of what a template says is cut short.</summary>
public class WholeTextTests
{
    public static TheoryData<string> Templates => [.. DrawnPlans.Templates];

    [Theory, MemberData(nameof(Templates))]
    public void No_text_of_a_template_ends_in_an_ellipsis(string template) =>
        Assert.All(DrawnPlans.Template(template), s => Assert.DoesNotContain(s.Items.OfType<TextItem>(), t => t.Text.EndsWith('…')));

    /// <summary>That it is from memory stands at the end of a source: without it an inspector takes it for read.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void The_figure_and_source_of_every_rule_stand_whole_on_sheet_9(string template)
    {
        var request = DrawnPlans.Request(File.ReadAllText(Repository.At("templates", template + ".plan")));
        string words = Solid(string.Concat(DrawnPlans.Template(template)[8].Items.OfType<TextItem>().Select(t => t.Text)));
        Assert.All(RuleResult.Of(request.Plan, request.Findings), r => Assert.Contains(Solid(r.Limit?.Text ?? r.Rule.Sources[0].Text), words));
    }

    private static string Solid(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
