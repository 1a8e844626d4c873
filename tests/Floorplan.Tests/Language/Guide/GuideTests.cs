using System.Text.RegularExpressions;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Words;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Guide;

/// <summary>Holds the language guide to the language.</summary>
public partial class GuideTests
{
    private static readonly string Guide = Sample.Read("templates/README.md").ReplaceLineEndings("\n");

    private static readonly HashSet<string> Shown =
        [.. PlanBlock().Matches(Guide).SelectMany(m => m.Groups[1].Value.Split(' ', '\n', ','))];

    public static TheoryData<int, string> Examples()
    {
        var data = new TheoryData<int, string>();
        foreach (Match match in PlanBlock().Matches(Guide))
        {
            data.Add(Guide[..match.Index].Count(c => c == '\n') + 1, match.Groups[1].Value);
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_parses_without_mistakes(int line, string text) =>
        Assert.True(
            Sample.Parse(text).Diagnostics.Count == 0,
            $"line {line}: {string.Concat(Sample.Parse(text).Diagnostics.Select(DiagnosticText.Write))}");

    [Fact]
    public void Every_statement_has_an_example()
    {
        var shown = PlanBlock().Matches(Guide).SelectMany(m => Sample.Parse(m.Groups[1].Value).Statements).Select(s => s.Keyword.Text)
            .ToHashSet();
        Assert.All(Vocabulary.Statements, s => Assert.Contains(s.Word, shown));
    }

    [Fact]
    public void Every_detail_word_is_named() =>
        Assert.All(
            Vocabulary.Statements.SelectMany(s => s.Details).Select(d => d.Word).Distinct(), w
                => Assert.True(Shown.Contains(w) || Guide.Contains($"`{w}`", StringComparison.Ordinal), w));

    /// <summary>FLOORPLAN_APPROVE=guide writes the tables of the guide.</summary>
    [Fact]
    public void The_tables_of_details_are_those_of_the_program() => IsThatOfTheProgram("details", DetailTables.Markdown());

    /// <summary>FLOORPLAN_APPROVE=guide writes it as well.</summary>
    [Fact]
    public void The_table_of_bounds_is_that_of_the_program() => IsThatOfTheProgram("bounds", BoundsTable.Markdown());

    [Fact]
    public void The_list_of_words_not_yet_used_is_complete()
    {
        string part = Section("Understood, but not yet used");
        foreach (var statement in Vocabulary.Statements)
        {
            var quiet = statement.Use == Use.NotYet
                ? [statement.Word]
                : statement.Details.Where(d => d.Use != Use.Used).Select(d => d.Word);
            Assert.All(quiet, w => Assert.Contains($"`{w}`", part, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_mistakes_in_the_guide_are_told_in_those_words()
    {
        var told = MistakeBlock().Matches(Section("Common mistakes"));
        Assert.InRange(told.Count, 8, 60);
        Assert.All(told, m =>
        {
            var said = Sample.Parse(m.Groups["text"].Value).Diagnostics;
            Assert.Equal(m.Groups["said"].Value, string.Concat(said.Select(DiagnosticText.Write)));
        });
    }

    private static void IsThatOfTheProgram(string part, string written)
    {
        string guide = Sample.Read("templates/README.md").ReplaceLineEndings("\n"), start = $"<!-- {part} -->\n";
        int from = guide.IndexOf(start, StringComparison.Ordinal) + start.Length;
        int to = guide.IndexOf($"<!-- end of {part} -->", StringComparison.Ordinal);
        if (Environment.GetEnvironmentVariable("FLOORPLAN_APPROVE") == "guide")
        {
            File.WriteAllText(Sample.At("templates/README.md"), guide[..from] + written + guide[to..]);
            return;
        }

        Assert.Equal(written, guide[from..to]);
    }

    private static string Section(string heading)
    {
        int start = Guide.IndexOf("\n## " + heading, StringComparison.Ordinal);
        Assert.True(start >= 0, $"the guide has no part `{heading}`");
        int end = Guide.IndexOf("\n## ", start + 1, StringComparison.Ordinal);
        return end < 0 ? Guide[start..] : Guide[start..end];
    }

    [GeneratedRegex(@"```unit\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex PlanBlock();

    [GeneratedRegex(@"```text wrong\n(?<text>.*?)```\n\n```text told\n(?<said>.*?)```", RegexOptions.Singleline)]
    private static partial Regex MistakeBlock();
}
