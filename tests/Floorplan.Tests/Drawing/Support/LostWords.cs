using Floorplan.Drawing.Blocks;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Sheets;

namespace Floorplan.Tests.Drawing.Support;

/// <summary>
/// What does not stand whole on the pages of its sheet, as the PDF's letters are read by a reader that is not ours. Lines are joined, for
/// words and long names are broken over them.
/// </summary>
internal static class LostWords
{
    public static IReadOnlyList<string> Of(SheetRequest request, IReadOnlyList<SheetScene> pages)
    {
        var lost = new List<string>();
        foreach (var (sheet, content) in SheetSet.All.Zip(SheetSet.Contents(request)))
        {
            var printed = PrintedText.Of(pages.OfSheet(sheet.Number));
            foreach (var block in Said(content).GroupBy(s => s.Of))
            {
                printed.Restart();
                lost.AddRange(block.Where(s => !printed.Next(s.Cells))
                    .Select(s => $"sheet {sheet.Number}, {s.Of}: {string.Join(" | ", s.Cells)}"));
            }

            lost.AddRange(LostLabels.Of(content, pages.OfSheet(sheet.Number), printed).Select(l => $"sheet {sheet.Number}, {l}"));
            if (sheet.Number == 1)
            {
                // Its last table: what the set has, each with its pages.
                lost.AddRange(SheetSet.All.Where(s => s != sheet).Select(s => Listed(s, pages.OfSheet(s.Number).Count))
                    .Where(row => !printed.Says(row)).Select(row => $"list of sheets: {row}"));
            }
        }

        return lost;
    }

    /// <summary>In the order in which a sheet gives them.</summary>
    private static IEnumerable<(string Of, string[] Cells)> Said(SheetContent content)
    {
        foreach (var entry in content.Legend)
        {
            yield return ("legend", [entry.Text]);
        }

        foreach (var finding in content.Findings)
        {
            yield return ("findings", [$"{finding.Number}", $"{finding.Severity}: {finding.Text}"]);
        }

        foreach (string caution in content.Cautions)
        {
            yield return ("cautions", [caution]);
        }

        foreach (var table in content.Tables.Where(t => t.Rows.Count > 0))
        {
            yield return (table.Title, [table.Title]);
            yield return (table.Title, [.. Columns(table)]);
            foreach (var row in table.Rows)
            {
                yield return (table.Title, row.Count == 1 ? [row[0].Text] : [.. row.Select(Text)]);
            }
        }

        foreach (var (note, i) in content.Notes.Select((n, i) => (n, i)))
        {
            yield return ("notes", [$"{i + 1}", note]);
        }

        foreach (var revision in content.Revisions)
        {
            yield return ("revisions", [revision.Mark, revision.Date, revision.Text]);
        }
    }

    /// <summary>A column that is empty in all rows is left out.</summary>
    public static IEnumerable<string> Columns(KeyTable table)
        => table.Columns.Where((_, i) => table.Rows.Any(r => r.Count > 1 && r[i].Text.Length > 0));

    private static string Text(Cell cell) => cell.Text;

    private static string Listed(Sheet sheet, int pages) => pages switch
    {
        1 => $"{sheet.Number}{sheet.Title}{sheet.Number}",
        2 => $"{sheet.Number}{sheet.Title}{sheet.Number}, {sheet.Number}.2",
        _ => $"{sheet.Number}{sheet.Title}{sheet.Number} to {sheet.Number}.{pages}",
    };
}
