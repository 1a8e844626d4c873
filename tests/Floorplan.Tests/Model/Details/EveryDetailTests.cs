using System.Globalization;
using System.Text.RegularExpressions;
using Floorplan.Language.Details;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Language.Words;
using Floorplan.Model;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Comparing;
using Floorplan.Model.Details;
using Xunit;

namespace Floorplan.Tests.Model.Details;

/// <summary>
/// Made from the declarations of the language: every figure of every example of every detail is found in the model, and adding,
/// changing and
/// removing each shows in a comparison, which is what `draw --since` and `compare --output json` print.
/// </summary>
public partial class EveryDetailTests
{
    /// <summary>Figures that the model keeps in another way: `5 shelves x 120 fish` are 600 fish, and 14 kg prints as such.</summary>
    private static readonly HashSet<string> Elsewhere = ["holds 5 shelves x 120 fish"];

    /// <summary>
    /// Details that the tried statement cannot do without, so that they are changed alone. Without `units` they are metric.
    /// </summary>
    private static readonly HashSet<string> Standing = ["units", "stops", "room", "supply", "exhaust", "on", "in", "wall"];

    public static TheoryData<string, string> Details()
    {
        var data = new TheoryData<string, string>();
        foreach (var statement in Vocabulary.Statements)
        {
            foreach (var detail in statement.Details)
            {
                data.Add(statement.Word, detail.Detail.Examples[0]);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Details))]
    public void Every_figure_of_an_example_is_in_the_model(string statement, string first)
    {
        foreach (string example in Find(statement, first).Examples.Where(e => !Elsewhere.Contains(e)))
        {
            string all = string.Join(' ', PlanThings.Of(Plan(statement, example), Floorplan.Language.Quantities.UnitSystem.Metric)
                .SelectMany(t => t.Details.Select(d => $"{d.Word} {d.Value}").Append(t.Id).Append(t.Label)));
            foreach (Match figure in Figures().Matches(example))
            {
                string value = decimal.Parse(figure.Value, CultureInfo.InvariantCulture).ToString("0.####", CultureInfo.InvariantCulture);
                Assert.True(all.Contains(value, StringComparison.Ordinal), $"{value} of `{example}` is not in: {all}");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Details))]
    public void Adding_changing_and_removing_a_detail_shows_in_a_comparison(string statement, string first)
    {
        var detail = Find(statement, first);
        string? before = detail.Needed == Needed.Never && !Standing.Contains(detail.Word) ? "" : null;
        foreach (string example in detail.Examples)
        {
            if (before is not null)
            {
                Shows(statement, before, example);
                Shows(statement, example, before);
            }

            before = example;
        }
    }

    private static void Shows(string statement, string was, string now)
    {
        var changes = PlanComparison.Of(Plan(statement, was), Plan(statement, now)).Changes;
        Assert.True(changes.Count > 0, $"`{statement}`: from `{was}` to `{now}` tells nothing");
        Assert.All(changes, c => Assert.False(string.IsNullOrWhiteSpace(c.Text)));
    }

    private static Detail Find(string statement, string first) =>
        Vocabulary.Find(statement)!.Details.Select(d => d.Detail).First(d => d.Examples[0] == first);

    private static Plan Plan(string statement, string example)
    {
        string text = DetailContext.Text(statement, example);
        var bound = PlanBinder.Bind(SyntaxTree.Parse(new SourceText(text, "unit.unit")), new NoFiles());
        Assert.True(bound.Plan is not null, text);
        return bound.Plan!;
    }

    [GeneratedRegex(@"(?<![\w-])\d+(\.\d+)?(?![\w-])")]
    private static partial Regex Figures();
}
