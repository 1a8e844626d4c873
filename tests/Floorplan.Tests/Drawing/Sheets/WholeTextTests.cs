using Floorplan.Checks.Framework;
using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;
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
        var request = DrawnPlans.Request(File.ReadAllText(Repository.At("templates", template + ".unit")));
        string words = Solid(string.Concat(DrawnPlans.Template(template).OfSheet(9).Texts().Select(t => t.Text)));
        Assert.All(
            RuleResult.Of(request.Plan, request.Findings), r => Assert.Contains(Solid(r.FigureAndSource), words));
    }

    /// <summary>A figure that breaks in two at the end of a line is read as two figures.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void No_short_word_or_figure_of_a_table_is_broken(string template)
    {
        const int longest = 12;
        var request = DrawnPlans.Request(File.ReadAllText(Repository.At("templates", template + ".unit")));
        foreach (var sheet in SheetSet.All)
        {
            var drawn = DrawnPlans.Template(template).OfSheet(sheet.Number).Texts().Where(t => t.Layer == Layers.Schedule)
                .SelectMany(t => Words(t.Text)).ToHashSet();
            var said = sheet.Content(request, SheetHead.For(request, sheet, SheetSet.All.Count)).Tables.Where(t => t.Rows.Count > 0)
                .SelectMany(t => t.Rows.Select(r => r.Select(c => c.Text)).Append(LostWords.Columns(t)))
                .SelectMany(r => r).SelectMany(Words)
                    .Where(w => w.Length <= longest);
            Assert.All(said, w => Assert.True(drawn.Contains(w) || Parts(w).All(drawn.Contains), w));
        }
    }

    /// <summary>A floor area on one line and its unit on the next is not a figure. Heads stand over their own units.</summary>
    [Theory, MemberData(nameof(Templates))]
    public void A_figure_of_a_table_stays_beside_its_unit(string template)
    {
        string[] units = ["m²", "m³", "mm", "kg", "lb", "kW", "L/min", "gpm", "lux", "fc", "sq", "cu", "°C", "°F"];
        var texts = DrawnPlans.Template(template).SelectMany(s => s.Items.OfType<TextItem>())
            .Where(t => t.Layer == Layers.Schedule && !t.Bold).ToList();
        Assert.NotEmpty(texts);
        Assert.All(texts, t => Assert.DoesNotContain(Words(t.Text)[0].TrimEnd(','), units));
    }

    /// <summary><c>three-phase</c> may be broken behind its hyphen, <c>1'-10"</c> may not.</summary>
    private static string[] Parts(string word)
        => word.All(c => char.IsLetter(c) || c == '-') ? word.Replace("-", "- ", StringComparison.Ordinal).Split(' ') : [word];

    private static string[] Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static string Solid(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
