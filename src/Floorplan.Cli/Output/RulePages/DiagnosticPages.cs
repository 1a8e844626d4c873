using Floorplan.Language.Diagnostics.Pages;
using Floorplan.Model.Binding.Pages;

namespace Floorplan.Cli.Output.RulePages;

/// <summary>The pages of all codes that mistakes in a text carry, as <c>explain</c> prints them.</summary>
internal static class DiagnosticPages
{
    public static IReadOnlyList<DiagnosticPage> All { get; } = [.. LanguagePages.All, .. ModelPages.All];

    public static DiagnosticPage? Find(string code) => All.FirstOrDefault(p => p.Code == code);

    public static RulePage PageOf(DiagnosticPage page) => new(page.Code,
    [
        new("What it means", [page.Means]),
        new("Wrong", page.Wrong.Split('\n'), IsPlan: true),
        new("Right", page.Right.Split('\n'), IsPlan: true),
    ]);
}
