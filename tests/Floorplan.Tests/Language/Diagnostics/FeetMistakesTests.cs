using System.Text.RegularExpressions;
using Floorplan.Language.Diagnostics.Pages;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Text;
using Floorplan.Model.Binding;
using Floorplan.Model.Binding.Files;
using Floorplan.Model.Binding.Pages;
using Floorplan.Tests.Checks.Support;
using Xunit;

namespace Floorplan.Tests.Language.Diagnostics;

/// <summary>A mistake in a feet plan is explained in feet: no metric figure that the plan itself does not have.</summary>
public sealed partial class FeetMistakesTests
{
    public static TheoryData<string> Codes => [.. LanguagePages.All.Concat(ModelPages.All).Select(p => p.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_wrong_example_of_a_page(string code)
    {
        var page = LanguagePages.All.Concat(ModelPages.All).Single(p => p.Code == code);
        string text = MetricUnits().Replace(page.Around + (page.WrongInFull?.Invoke() ?? page.Wrong), "${before}feet");
        var found =
            PlanBinder.Bind(SyntaxTree.Parse(new SourceText(text, "test"), UnitSystem.Feet), new MemoryFiles(page.Files)).Diagnostics;
        Assert.Empty(
            found.SelectMany(d => MetricFigures.In($"{d.Message}; {d.Help}").Where(f => !text.Contains(f, StringComparison.Ordinal))
                .Select(f => $"{d.Code}: {f} in {d.Message}; {d.Help}")));
    }

    [GeneratedRegex(@"^(?<before>[ \t]+units[ \t]+)metric\b", RegexOptions.Multiline)]
    private static partial Regex MetricUnits();
}
