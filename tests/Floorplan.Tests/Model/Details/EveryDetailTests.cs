using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Floorplan.Cli.Output.Json;
using Floorplan.Cli.Output.Reports;
using Floorplan.Drawing.Sheets;
using Floorplan.Language.Details;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Language.Words;
using Floorplan.Model;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Comparing;
using Floorplan.Model.Details;
using Floorplan.Tests.Architecture;
using Floorplan.Tests.Drawing.Support;
using Xunit;

namespace Floorplan.Tests.Model.Details;

/// <summary>
/// Made from the declarations of the language: every figure of every example of every detail is found in the model; adding, changing
/// and removing each shows in `compare`, in its JSON, in the JSON of `check` and on sheet 1 of `draw --since`.
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

    public static IEnumerable<object[]> DrawnDetails => Thoroughness.Slice(Details(), 7);

    [Theory]
    [MemberData(nameof(DrawnDetails))]
    public void Adding_and_removing_a_detail_is_listed_on_sheet_1_since_the_other_revision(string statement, string first)
    {
        var detail = Find(statement, first);
        bool alone = detail.Needed == Needed.Never && !Standing.Contains(detail.Word);
        string was = alone ? "" : detail.Examples[0];
        string now = alone ? detail.Examples[0] : detail.Examples[^1];
        if (was != now)
        {
            IsListed(statement, was, now);
            IsListed(statement, now, was);
        }
    }

    private static void Shows(string statement, string was, string now)
    {
        var (old, fresh) = (Plan(statement, was), Plan(statement, now));
        var changes = PlanComparison.Of(old, fresh).Changes;
        Assert.True(changes.Count > 0, $"`{statement}`: from `{was}` to `{now}` tells nothing");
        Assert.All(changes, c => Assert.False(string.IsNullOrWhiteSpace(c.Text)));
        using var told = Json(o => CompareJson.Write(o, "was.unit", "now.unit", changes, ComparedFindings.Of([], [])));
        Assert.Equal(
            changes.Select(c => c.Text),
            told.RootElement.GetProperty("changes").EnumerateArray().Select(c => c.GetProperty("text").GetString()));
        Assert.True(Things(old) != Things(fresh), $"`{statement}`: from `{was}` to `{now}` changes nothing in `check --output json`");
    }

    /// <summary>Words may be broken over lines, so blanks do not count.</summary>
    private static void IsListed(string statement, string was, string now)
    {
        var request = DrawnPlans.Request(Plan(statement, now));
        var changes = PlanComparison.Of(Plan(statement, was), request.Plan).Changes;
        var pages = SheetSet.Draw(request with { Changes = changes, Since = "revision A" }, [1]);
        string drawn = Close(string.Concat(pages.Texts().Select(t => t.Text)));
        Assert.NotEmpty(changes);
        Assert.All(changes, c => Assert.Contains(Close(c.Text), drawn));
    }

    private static string Close(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    /// <summary>All details of all things, as a program reads them; places in the file are left out.</summary>
    private static string Things(Plan plan)
    {
        using var json = Json(o => JsonDocumentText.Write(o, writer => ThingJson.Write(writer, plan)));
        return string.Join('\n', json.RootElement.GetProperty("things").EnumerateArray().Select(t =>
            $"{t.GetProperty("kind")} {t.GetProperty("id")} {t.GetProperty("label")} {t.GetProperty("details").GetRawText()}"));
    }

    private static JsonDocument Json(Action<TextWriter> write)
    {
        using var written = new StringWriter();
        write(written);
        return JsonDocument.Parse(written.ToString());
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
