using System.Text;

namespace Floorplan.Cli.Output.Drawings.Pages;

/// <summary>The files of one plan under who needs them. No two links of the page have the same words.</summary>
/// <param name="plan">Named in each link where the page has several plans; else empty.</param>
/// <param name="about">What more is known of a file, such as what its sheet shows.</param>
internal sealed class FileLists(string plan, IReadOnlyDictionary<string, string> about)
{
    /// <param name="level">Of the headings.</param>
    public void Write(StringBuilder html, IReadOnlyList<PageFile> files, int level)
    {
        foreach (var group in files.GroupBy(f => f.Reader).OrderBy(g => g.Key))
        {
            html.Append(PageText.Heading(level, group.Key.Words())).Append("<ul>\n");
            foreach (var sheet in group.Where(f => f.Sheet is not null).GroupBy(f => (f.Number, f.Part, f.Sheet)).OrderBy(g => g.Key))
            {
                Item(html, [.. sheet]);
            }

            foreach (var file in group.Where(f => f.Sheet is null))
            {
                Item(html, [file]);
            }

            html.Append("</ul>\n");
        }
    }

    private string Of => plan.Length > 0 ? $" of {plan}" : "";

    /// <summary>The same in several formats is one entry.</summary>
    private void Item(StringBuilder html, IReadOnlyList<PageFile> same)
    {
        html.Append("<li>").Append(PageText.Link(same[0].Name, $"{same[0].What}{Of} ({same[0].Format})"));
        foreach (var file in same.Skip(1))
        {
            html.Append(", ").Append(PageText.Link(file.Name, $"sheet {file.Sheet}{Of} as {file.Format}"));
        }

        if (about.TryGetValue(same[0].Name, out string? words))
        {
            html.Append("<br/>\n").Append(PageText.Text(words));
        }

        html.Append("</li>\n");
    }
}
