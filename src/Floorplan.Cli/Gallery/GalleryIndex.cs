using System.Text;
using Floorplan.Checks.Framework;
using Floorplan.Cli.Templates;
using Floorplan.Drawing.Sheets;

namespace Floorplan.Cli.Gallery;

/// <summary>The gallery's first page.</summary>
internal static class GalleryIndex
{
    public static string Write()
    {
        var text = new StringBuilder();
        text.Append(GalleryFiles.Marker).Append("\n\n# Gallery\n\n");
        text.Append("Every drawing and page here is made by the program from the [templates](../templates) and its rules. ");
        text.Append("Names, sites and figures of the plans are invented.\n\n## Templates\n");
        foreach (string name in TemplateShelf.Names)
        {
            Template(text, name);
        }

        text.Append("\n## Classic mistakes\n\n");
        foreach (var mistake in ClassicMistakes.All)
        {
            text.Append("- [").Append(mistake.Title).Append("](mistakes/").Append(mistake.Name).Append("/README.md): ")
                .Append(mistake.Story)
                .Append('\n');
        }

        text.Append("\n## Rules\n\nEvery figure with its place, trade, kind, source and how it was read: [limits](rules/limits.md).\n");
        foreach (var group in RuleCatalogue.All.GroupBy(r => r.Group))
        {
            text.Append("\n### ").Append(group.Key.Title()).Append("\n\n");
            foreach (var rule in group)
            {
                text.Append("- [`").Append(rule.Name).Append("`](rules/").Append(rule.Name).Append(".md): ").Append(rule.Says).Append('\n');
            }
        }

        return text.ToString();
    }

    private static void Template(StringBuilder text, string name)
    {
        text.Append("\n### [").Append(name).Append("](../templates/").Append(name).Append(".unit)\n\n");
        text.Append(TemplateShelf.Describe(name)).Append("\n\n");
        foreach (var sheet in SheetSet.All)
        {
            text.Append("![").Append(name).Append(", sheet ").Append(sheet.Number).Append(": ").Append(sheet.Title).Append("](templates/")
                .Append(name);
            text.Append('/').Append(sheet.Number).Append('-').Append(sheet.Name).Append(".svg)\n");
        }
    }
}
