using Floorplan.Checks.Framework;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Drawings;
using Floorplan.Cli.Output.RulePages;
using Floorplan.Cli.Templates;
using Floorplan.Drawing.Sheets;
using Floorplan.Drawing.Svg;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Binding.Files;

namespace Floorplan.Cli.Gallery;

/// <summary>Makes the whole gallery from the templates, the classic mistakes and the rules: the same bytes on every run.</summary>
internal static class GalleryMaker
{
    public static GalleryFiles Make()
    {
        var files = new GalleryFiles();
        foreach (string name in TemplateShelf.Names)
        {
            foreach (var (sheet, svg) in SheetFiles.Draw(Examine(TemplateShelf.Find(name)!, name)))
            {
                files.Add($"templates/{name}/{sheet}.svg", svg);
            }
        }

        foreach (var mistake in ClassicMistakes.All)
        {
            MistakePage.Add(files, mistake);
        }

        foreach (var rule in RuleCatalogue.All)
        {
            files.Add($"rules/{rule.Name}.md", RulePageMarkdown.Write(RulePage.Of(rule)));
            files.Add($"rules/{rule.Name}-bad.svg", Picture(rule, rule.Bad, rule.Name + ", with the fault"));
            files.Add($"rules/{rule.Name}-good.svg", Picture(rule, rule.Good, rule.Name + ", mended"));
        }

        files.Add("rules/limits.md", LimitTable.Markdown());
        files.Add("README.md", GalleryIndex.Write());
        return files;
    }

    /// <summary>An example with what its own rule finds marked on it.</summary>
    private static string Picture(Rule rule, string plan, string title)
    {
        var examination = Examine(plan, "example");
        var request = new SheetRequest(examination.Facts!, [.. examination.Findings.Where(f => f.Rule == rule.Name)]);
        return SvgWriter.Write(PlanPicture.Draw(request, "example", title));
    }

    /// <param name="name">Of the plan, without extension.</param>
    /// <exception cref="InvalidOperationException">The text does not bind: a template or a mistake of ours needs mending.</exception>
    public static Examination Examine(string text, string name)
    {
        var source = new Language.Text.SourceText(text, name + ".unit");
        var examination = Examination.Of(source, new NoFiles());
        return examination.Plan is null
            ? throw new InvalidOperationException(
                $"{name}: {string.Join("; ", examination.Diagnostics.Select(d => $"{DiagnosticText.Place(d.Span)} {d.Message}"))}")
            : examination;
    }
}
