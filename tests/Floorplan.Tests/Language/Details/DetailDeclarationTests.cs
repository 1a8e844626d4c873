using Floorplan.Language.Details;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Words;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Details;

/// <summary>Tests made from the declarations of the language, so that a new detail is held by them without a line of its own.</summary>
public class DetailDeclarationTests
{
    private static readonly Dictionary<string, string> Heads = new()
    {
        ["plan"] = "plan \"A\"",
        ["shell"] = "shell shed 9000 x 5000",
        ["room"] = "room t \"T\" staff",
        ["partitions"] = "partitions",
        ["kind"] = "kind t \"T\"",
        ["rail"] = "rail t \"T\"",
        ["hose"] = "hose t",
        ["light"] = "light lobby 220 lux",
        ["air"] = "air supply lobby",
        ["flow"] = "flow product",
        ["day"] = "day",
        ["accept"] = "accept some-rule \"agreed\"",
        ["sheet"] = "sheet 1",
    };

    public static TheoryData<string> Statements => [.. Vocabulary.Statements.Where(s => s.Details.Count > 0).Select(s => s.Word)];

    public static TheoryData<string, string> NeededDetails()
    {
        var data = new TheoryData<string, string>();
        foreach (var statement in Vocabulary.Statements)
        {
            foreach (var detail in statement.Details.Where(d => d.Detail.Needed == Needed.Always))
            {
                data.Add(statement.Word, detail.Word);
            }
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Statements))]
    public void Every_detail_has_a_meaning_and_examples_that_read(string statement)
    {
        foreach (var detail in Vocabulary.Find(statement)!.Details.Select(d => d.Detail))
        {
            Assert.False(string.IsNullOrWhiteSpace(detail.Says), detail.Word);
            Assert.NotEmpty(detail.Examples);
            foreach (string example in detail.InFeet is { } feet ? [.. detail.Examples, feet] : detail.Examples)
            {
                string text = Text(statement, [example]);
                Assert.True(Told(text) == "", text + Told(text));
                Assert.Contains(Sample.Parse(text).Statements[^1].Details, d => ReferenceEquals(d.Declared, detail) && d.Value is not null);
            }
        }
    }

    /// <summary>
    /// Lists end where the next detail starts, whatever it is. Before, 15 of 23 details of a station could not follow `needs`.
    /// </summary>
    [Theory]
    [MemberData(nameof(Statements))]
    public void Every_two_details_on_one_line_read_as_on_lines_of_their_own(string statement)
    {
        var details = Vocabulary.Find(statement)!.Details.Select(d => d.Detail).Where(d => statement != "flow").ToList();
        foreach (var first in details)
        {
            foreach (var second in details.Where(d => d != first && (d.Group is null || d.Group != first.Group)))
            {
                foreach (string example in first.Examples)
                {
                    string apart = Text(statement, [example, second.Examples[0]]);
                    string together = Text(statement, [$"{example}, {second.Examples[0]}"]);
                    Assert.True(Told(together) == Told(apart), together + Told(together));
                    Assert.Equal(Said(apart), Said(together));
                }
            }
        }
    }

    /// <summary>Pairs do not find a word that only a third one swallows, so all that may stand together stand in 40 orders.</summary>
    [Theory]
    [MemberData(nameof(Statements))]
    public void All_details_on_one_line_read_the_same_in_any_order(string statement)
    {
        var all = Vocabulary.Find(statement)!.Details.Select(d => d.Detail).Where(_ => statement != "flow").ToList();
        var chosen = all.GroupBy(d => d.Group ?? d.Word).Select(g => g.First()).ToList();
        var random = new Random(20261127);
        for (int order = 0; order < 40; order++)
        {
            var examples = chosen.Select(d => d.Examples[random.Next(d.Examples.Count)]).ToArray();
            string apart = Text(statement, examples);
            random.Shuffle(examples);
            string together = Text(statement, [string.Join(", ", examples)]);
            Assert.True(Told(together) == Told(apart), together + Told(together) + "\nbut apart: " + Told(apart));
            Assert.Equal(Said(apart), Said(together));
        }
    }

    [Theory]
    [MemberData(nameof(Statements))]
    public void A_detail_that_counts_once_is_told_when_it_is_said_twice(string statement)
    {
        foreach (var detail in Vocabulary.Find(statement)!.Details.Select(d => d.Detail)
            .Where(d => !d.Repeatable
                && !d.BareRepeats
                && d.Forms[0] == d.Examples[0].Split(',')[0][..Math.Min(d.Forms[0].Length, d.Examples[0].Length)]))
        {
            string text = Text(statement, [detail.Examples[0], detail.Examples[^1]]);
            Assert.Contains(Sample.Parse(text).Diagnostics, d => d.Code == "said-twice");
        }
    }

    [Theory]
    [MemberData(nameof(NeededDetails))]
    public void A_needed_detail_that_is_missing_is_told_with_a_way_out(string statement, string word)
    {
        var others = Vocabulary.Find(statement)!.Details.Where(d => d.Detail.Needed == Needed.Always && d.Word != word)
            .Select(d => d.Detail.Examples[0]);
        var told = Assert.Single(Sample.Parse(Heads[statement] + string.Concat(others.Select(o => "\n  " + o))).Diagnostics);
        Assert.Equal(("detail-missing", Severity.Error, 1), (told.Code, told.Severity, told.Span.Position.Line));
        Assert.Contains($"`{word}`", told.Message);
        Assert.Contains("add a line such as", told.Help);
    }

    private static string Text(string statement, IEnumerable<string> lines)
    {
        string head = Heads.GetValueOrDefault(statement) ?? statement switch
        {
            "station" or "store" => $"{statement} t \"T\"",
            "bin" or "sink" => $"{statement} t wash",
            "door" or "hatch" or "window" or "opening" or "chute" or "vent" => $"{statement} t \"T\" receiving to outside",
            _ => $"{statement} t",
        };
        var written = lines.ToList();
        var needed = Vocabulary.Find(statement)!.Details.Select(d => d.Detail)
            .Where(d => d.Needed == Needed.Always && !written.Exists(w => w.Contains(d.Word + " ", StringComparison.Ordinal)));
        if (statement == "shell")
        {
            // Each detail fits some kind of shell; hitches and axles are of a trailer.
            bool trailer =
                written.Exists(w => w.Contains("hitch", StringComparison.Ordinal)
                    || w.Contains("axles", StringComparison.Ordinal)
                    || w.Contains("weight", StringComparison.Ordinal));
            bool shed =
                written.Exists(w => w.Contains("eaves", StringComparison.Ordinal) || w.Contains("corners", StringComparison.Ordinal));
            head = trailer && !shed ? "shell trailer 6000 x 2400 x 2500" : shed && trailer ? "shell" : head;
        }

        return head + string.Concat(written.Concat(needed.Select(d => d.Examples[0])).Select(l => "\n  " + l)) + "\n";
    }

    private static string Told(string text) => string.Concat(Sample.Parse(text).Diagnostics
        .Where(d => d.Code is not ("detail-missing" or "unknown-product") && !(d.Code == "not-expected" && d.Span.Position.Line == 1))
        .Select(d => $"{d.Code} {d.Message}; "));

    /// <summary>What is said of each detail, in the words of the text.</summary>
    private static IEnumerable<string> Said(string text) => Sample.Parse(text).Statements[^1].Details
        .Where(d => d.Value is not null)
        .GroupBy(d => d.Declared!.Word)
        .Select(g => $"{g.Key}: {string.Join(" + ", g.Select(Words))}")
        .Order(StringComparer.Ordinal);

    private static string Words(DetailSyntax detail) => detail.Span.Value.TrimEnd(',', ' ');
}
