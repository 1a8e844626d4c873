using System.Text.RegularExpressions;
using Floorplan.Language.Diagnostics;
using Floorplan.Language.Diagnostics.Pages;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Binding.Pages;
using Floorplan.Tests.Architecture;
using Xunit;

namespace Floorplan.Tests.Language.Diagnostics;

/// <summary>A page for every code that the source can issue, and examples that do what the page says.</summary>
public partial class DiagnosticPageTests
{
    /// <summary>Guards behind a check of the parser: no text reaches them, so they have no example and need no page.</summary>
    private static readonly string[] Unreachable = ["size-not-positive", "worker-count"];

    public static TheoryData<string> LanguageCodes => [.. LanguagePages.All.Select(p => p.Code)];

    /// <summary>All but the one that comes from a whole check, which <see cref="Cli.WorkCeilingTests"/> tries.</summary>
    public static TheoryData<string> ModelCodes => [.. ModelPages.All.Select(p => p.Code).Where(c => c != "too-much-work")];

    [Fact]
    public void Every_code_in_the_source_has_one_page()
    {
        string[] issued =
            [.. IssuedIn("src/Floorplan.Language").Concat(IssuedIn("src/Floorplan.Model")).Except(Unreachable).Distinct()
                .Order(StringComparer.Ordinal)];
        Assert.Equal(issued, LanguagePages.All.Concat(ModelPages.All).Select(p => p.Code).Order(StringComparer.Ordinal));
    }

    /// <summary>So that the search above cannot pass by finding nothing.</summary>
    [Fact]
    public void The_search_finds_codes_however_they_are_written()
    {
        Assert.Superset(new HashSet<string> { "unknown-name", "hidden-character", "axle-count" }, IssuedIn("src").ToHashSet());
        Assert.Superset(
            new HashSet<string> { "too-many-rooms", "too-many-things", "floor-without-room", "too-many-mistakes", "only-kinds-are-read" },
            IssuedIn("src").ToHashSet());
    }

    [Theory]
    [MemberData(nameof(LanguageCodes))]
    public void A_page_of_the_language_tells_the_truth(string code)
        => TellsTheTruth(LanguagePages.All.Single(p => p.Code == code), (text, _) => Parse(text).Diagnostics);

    [Theory]
    [MemberData(nameof(ModelCodes))]
    public void A_page_of_the_model_tells_the_truth(string code)
        => TellsTheTruth(
            ModelPages.All.Single(p => p.Code == code), (text, files) => PlanBinder.Bind(Parse(text), new MemoryFiles(files)).Diagnostics);

    private static void TellsTheTruth(
        DiagnosticPage page, Func<string, IReadOnlyDictionary<string, string>, IReadOnlyList<Diagnostic>> read)
    {
        var wrong = read(page.Around + (page.WrongInFull?.Invoke() ?? page.Wrong), page.Files);
        if (page.Code == "too-many-mistakes")
        {
            Assert.Equal(page.Code, wrong[^1].Code);
        }
        else
        {
            Assert.Equal([page.Code], wrong.Select(d => d.Code).Distinct());
        }

        Assert.Equal([], read(page.Around + page.Right, page.FilesMended ?? page.Files).Select(d => d.Message));
    }

    private static SyntaxTree Parse(string text) => SyntaxTree.Parse(new SourceText(text, "unit.unit"));

    private static IEnumerable<string> IssuedIn(string folder)
        => Repository.Sources(folder).SelectMany(f => Issue().Matches(File.ReadAllText(f))).SelectMany(m => m.Groups["code"].Captures)
            .Select(c => c.Value);

    // Error("code", …), Warn(…), Note(…), Add("code", …), new Diagnostic(severity, "code", …), and a choice of two.
    [GeneratedRegex(
        @"\b(Error|Warning|Warn|Note|Add|Diagnostic)\(\s*([^""();]*[,?]\s*)?"
        + @"""(?<code>[a-z]+(-[a-z]+)+)""(\s*:\s*""(?<code>[a-z]+(-[a-z]+)+)"")?")]
    private static partial Regex Issue();
}
