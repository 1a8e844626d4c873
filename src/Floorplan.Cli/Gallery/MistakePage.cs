using System.Text;
using Floorplan.Checks.Findings;
using Floorplan.Cli.Input;
using Floorplan.Cli.Output.Drawings;
using Floorplan.Cli.Output.Printing;
using Floorplan.Cli.Output.Reports;
using Floorplan.Cli.Templates;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Cli.Gallery;

/// <summary>One mistake's folder: both plans, both drawings, and a page with the change and the finding.</summary>
internal static class MistakePage
{
    public static void Add(GalleryFiles files, Mistake mistake)
    {
        string folder = $"mistakes/{mistake.Name}/";
        string good = TemplateShelf.Find(mistake.Template)
            ?? throw new InvalidOperationException($"mistake {mistake.Name}: no template {mistake.Template}");
        string bad = mistake.Spoil(good);
        files.Add(folder + "before.unit", bad);
        files.Add(folder + "after.unit", good);

        var before = GalleryMaker.Examine(bad, "before");
        var after = GalleryMaker.Examine(good, "after");
        var was = AddPages(files, folder, "before", before, mistake.Sheet);
        var mended = AddPages(files, folder, "after", after, mistake.Sheet);

        Finding[] found =
            [.. before.Findings.Where(f => f.Rule == mistake.Rule && !after.Findings.Any(a => a.Rule == f.Rule && a.Message == f.Message))];
        if (found.Length == 0)
        {
            throw new InvalidOperationException($"mistake {mistake.Name}: {mistake.Rule} finds nothing");
        }

        files.Add(folder + "README.md", Page(mistake, found, was, mended));
    }

    /// <summary>All pages of a sheet; the words for its marks may stand on the second.</summary>
    private static IReadOnlyList<string> AddPages(GalleryFiles files, string folder, string name, Examination examination, int sheet)
    {
        var names = new List<string>();
        foreach (var (index, page) in SheetFiles.Draw(examination, [sheet]).Index())
        {
            names.Add(index == 0 ? $"{name}.svg" : FormattableString.Invariant($"{name}-{index + 1}.svg"));
            files.Add(folder + names[^1], page.Svg);
        }

        return names;
    }

    private static string Page(Mistake mistake, IReadOnlyList<Finding> found, IReadOnlyList<string> before, IReadOnlyList<string> after)
    {
        var text = new StringBuilder();
        text.Append("# ").Append(mistake.Title).Append("\n\n").Append(mistake.Story).Append("\n\n");
        text.Append("Found by [`").Append(mistake.Rule).Append("`](../../rules/").Append(mistake.Rule)
            .Append(".md) in [before.unit](before.unit):\n\n");
        text.Append("```text\n");
        text.Append(Findings(found));
        text.Append("```\n\nThe change that mends it, giving [after.unit](after.unit):\n\n```diff\n");
        foreach (var (good, bad) in mistake.Edits)
        {
            AppendLines(text, "- ", bad);
            AppendLines(text, "+ ", good);
        }

        text.Append("```\n\n| before | after |\n|---|---|\n");
        for (int i = 0; i < Math.Max(before.Count, after.Count); i++)
        {
            text.Append("| ").Append(Picture("before", before, i)).Append(" | ").Append(Picture("after", after, i)).Append(" |\n");
        }

        return text.ToString();
    }

    private static string Picture(string words, IReadOnlyList<string> files, int page)
        => page < files.Count ? $"![{words}]({files[page]})" : "";

    private static string Findings(IReadOnlyList<Finding> found)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var page = new PlainPage(writer);
        foreach (var finding in found)
        {
            page.Line($"{DiagnosticText.Place(finding.Span)}: {DiagnosticText.Word(finding.Severity)}: {finding.Message}");
            ExcerptLine.Write(page, finding.Span, Tone.Plain);
            page.Line("  mend: ", finding.Mend);
        }

        return writer.ToString();
    }

    private static void AppendLines(StringBuilder text, string sign, string lines)
    {
        foreach (string line in lines.Split('\n'))
        {
            text.Append(sign).Append(line).Append('\n');
        }
    }
}
